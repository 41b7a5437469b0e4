import type { Worked } from '../measure/worked.ts';
import type { Book } from './types.ts';

/** The latest value of every derived spec of a book that has a known uncertainty: what is checked by drawing. */
export function latestWorked(book: Book): Worked[] {
  return book.projects.flatMap(({ recipes, values }) =>
    [...recipes.keys()].flatMap((id) => {
      const latest = values.get(id)?.at(-1);
      return latest?.kind === 'worked' && latest.u !== undefined ? [latest] : [];
    }),
  );
}
