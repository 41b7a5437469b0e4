import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Book, Entry } from '../book/types.ts';
import { type Addresses, addressesOf } from '../publish/address.ts';
import { feedFiles } from '../publish/feed-files.ts';
import { entryOfPage } from '../publish/plain-html.ts';
import { type Words, wordsOf } from '../words/words.ts';

/** Writes the feeds of a built site. Their entries are taken from the finished pages, so both say the same. */
export async function writeFeeds(site: string, book: Book): Promise<void> {
  if (book.site === undefined) return;
  const to = addressesOf(book.site.address);
  const texts = await textsOf(site, book, { to, words: wordsOf(book.site.language) });
  const htmlOf = ({ entry }: { entry: Entry }) => texts.get(entry) ?? '';
  for (const { path, text } of feedFiles(book, book.site, { to, htmlOf })) {
    const file = join(site, path.slice(to.home().length));
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, text);
  }
}

async function textsOf(
  site: string,
  book: Book,
  { to, words }: { readonly to: Addresses; readonly words: Words },
): Promise<ReadonlyMap<Entry, string>> {
  const texts = new Map<Entry, string>();
  for (const project of book.projects)
    for (const entry of project.entries) {
      const path = to.entry(project, entry);
      const page = join(site, path.slice(to.home().length), 'index.html');
      texts.set(
        entry,
        entryOfPage(await readFile(page, 'utf8'), { address: to.absolute(path), words }),
      );
    }
  return texts;
}
