// A process of its own that reads finished pages: what the library of the search takes for it is given back when it ends.
import type { EntryTexts } from './entry-texts.ts';
import { answerOnce } from './own-process.ts';
import { type Outside, readFinished } from './read-finished.ts';
import { endSearch } from './write-search.ts';

/** What the build asks for: all that is made of the pages of some projects, which are in a folder. It is answered with the texts of their entries. */
export interface FinishOrder extends Outside {
  readonly folder: string;
  readonly projects: readonly string[];
}

await answerOnce(async ({ folder, projects, ...outside }: FinishOrder): Promise<EntryTexts> => {
  const texts = await readFinished(folder, projects, outside);
  await endSearch();
  return texts;
});
