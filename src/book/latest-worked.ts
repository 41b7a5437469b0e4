import type { Worked } from '../measure/worked.ts';
import type { Project } from './types.ts';

/** The latest value of every derived spec of a project that has a known uncertainty: what is checked by drawing. */
export function latestWorked({ recipes, values }: Project): Worked[] {
  return [...recipes.keys()].flatMap((id) => {
    const latest = values.get(id)?.at(-1);
    return latest?.kind === 'worked' && latest.u !== undefined ? [latest] : [];
  });
}
