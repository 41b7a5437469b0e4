import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { close, createIndex } from 'pagefind';
import type { Book } from '../book/types.ts';
import { addressesOf } from '../publish/address.ts';
import { searchedPages } from '../publish/search-page.ts';
import { tongueOf } from '../words/words.ts';

/** Files that the library would add for its own look, which is not ours. */
const NOT_OURS = /ui|highlight|component|playground/;

const MAIN = '<main id="content"';

/** Writes the search index of a built site into its folder `find/`; it holds nothing that no page says. */
export async function writeSearch(site: string, book: Book): Promise<void> {
  if (book.site === undefined) return;
  const to = addressesOf(book.site.address);
  const { tag } = tongueOf(book.site.language);
  const { index } = await createIndex({ forceLanguage: tag });
  if (index === undefined) throw new Error('the search index could not be started');
  try {
    for (const { path, notes } of searchedPages(book, to, tag)) {
      const page = await readFile(join(site, path.slice(to.home().length), 'index.html'), 'utf8');
      const content = page.replace(`${MAIN}>`, `${MAIN} data-pagefind-body>${notes}`);
      const { errors } = await index.addHTMLFile({ url: path, content });
      if (errors.length > 0) throw new Error(`${path} can't be searched: ${errors.join(', ')}`);
    }
    const { files } = await index.getFiles();
    for (const { path, content } of files) {
      if (NOT_OURS.test(path)) continue;
      const file = join(site, 'find', path);
      await mkdir(dirname(file), { recursive: true });
      await writeFile(file, content);
    }
  } finally {
    await close();
  }
}
