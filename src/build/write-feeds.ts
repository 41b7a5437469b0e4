import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Book } from '../book/types.ts';
import { addressesOf } from '../publish/address.ts';
import { feedFiles } from '../publish/feed-files.ts';

/** Writes the feeds of a built site, given the text of each entry by the path of its file. */
export async function writeFeeds(
  site: string,
  book: Book,
  texts: ReadonlyMap<string, string>,
): Promise<void> {
  if (book.site === undefined) return;
  const to = addressesOf(book.site.address);
  const htmlOf = ({ entry }: { entry: { file: string } }) => texts.get(entry.file) ?? '';
  for (const { path, text } of feedFiles(book, book.site, { to, htmlOf })) {
    const file = join(site, path.slice(to.home().length));
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, text);
  }
}
