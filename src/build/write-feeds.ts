import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Site } from '../model/kinds.ts';
import { addressesOf } from '../publish/address.ts';
import type { EntryFeed } from '../publish/entry-feed.ts';
import { feedFiles } from '../publish/feed-files.ts';

/** Writes the feeds of a built site, given the text of each entry by the path of its file. */
export async function writeFeeds(
  folder: string,
  feeds: readonly EntryFeed[],
  { site, texts }: { readonly site: Site; readonly texts: ReadonlyMap<string, string> },
): Promise<void> {
  const to = addressesOf(site.address);
  const htmlOf = ({ file }: { file: string }) => texts.get(file) ?? '';
  for (const { path, text } of feedFiles(feeds, { site, to, htmlOf })) {
    const file = join(folder, path.slice(to.home().length));
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, text);
  }
}
