// A process of its own that writes the index of some projects' pages: what the library takes for it is given back when it ends.
import { answerOnce } from './own-process.ts';
import { endSearch, type Searched, writeSearch } from './write-search.ts';

/** What the build asks for: the indexes of projects whose pages are made in a folder. */
export interface SearchOrder extends Searched {
  readonly folder: string;
  readonly projects: readonly string[];
}

await answerOnce(async ({ folder, projects, ...searched }: SearchOrder): Promise<'written'> => {
  for (const id of projects) await writeSearch(folder, searched, id);
  await endSearch();
  return 'written';
});
