import { readFileSync } from 'node:fs';
import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { close, createIndex } from 'pagefind';
import { eachOf } from '../photo/each.ts';
import { addressesOf } from '../publish/address.ts';
import { searchedPart } from '../publish/searched-part.ts';
import { tongueOf } from '../words/words.ts';
import type { ToldOutside } from './ready.ts';

/** Files that the library would add for its own look, which is not ours. */
const NOT_OURS = /ui|highlight|component|playground/;

/** The program itself, which the search page takes from the site's own folder. */
const PROGRAM = /\.js$/;

/** Pages on their way to the library, so that neither waits for the other. */
const AT_ONCE = { items: 8, weight: 8 };

/** What indexes are made of, beside the pages. */
export type Searched = Pick<ToldOutside, 'site' | 'searched'>;

/**
 * Writes the index of pages that are made, into a folder `find/`: of one project into its own folder, or of those that belong to none.
 * It holds nothing that no page says. The search page puts the indexes together.
 */
export async function writeSearch(
  folder: string,
  { site, searched }: Searched,
  id: string = '',
): Promise<void> {
  const to = addressesOf(site.address);
  const { tag } = tongueOf(site.language);
  const { index } = await createIndex({ forceLanguage: tag });
  if (index === undefined) throw new Error('the search index could not be started');
  await eachOf(
    searched.filter((page) => page.project === id),
    AT_ONCE,
    () => 1,
    async ({ path, notes }) => {
      // Read at once: the bytes of the index depend on the order that pages are handed over in.
      const page = readFileSync(join(folder, path.slice(to.home().length), 'index.html'), 'utf8');
      const content = searchedPart(page, notes);
      const { errors } = await index.addHTMLFile({ url: path, content });
      if (errors.length > 0) throw new Error(`${path} can't be searched: ${errors.join(', ')}`);
    },
  );
  const found = join(folder, id, 'find');
  const { errors } = await index.writeFiles({ outputPath: found });
  await index.deleteIndex();
  if (errors.length > 0) throw new Error(`the search can't be written: ${errors.join(', ')}`);
  for (const file of await readdir(found))
    if (NOT_OURS.test(file) || (id !== '' && PROGRAM.test(file)))
      await rm(join(found, file), { recursive: true });
}

/** Ends the program that makes indexes, once no more are to be made. */
export const endSearch = close;
