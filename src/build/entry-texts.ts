import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { addressesOf } from '../publish/address.ts';
import { entryOfPage } from '../publish/plain-html.ts';
import { wordsOf } from '../words/words.ts';
import type { ToldOutside } from './ready.ts';

/** Texts of entries by the paths of their files. */
export type EntryTexts = Readonly<Record<string, string>>;

/** The text of each entry of some projects as feeds have it, taken from its finished page so that both say the same. */
export async function entryTexts(
  folder: string,
  projects: readonly string[],
  { site, feeds }: Pick<ToldOutside, 'site' | 'feeds'>,
): Promise<EntryTexts> {
  const home = addressesOf(site.address).home();
  const words = wordsOf(site.language);
  const texts: Record<string, string> = {};
  for (const { project, entries } of feeds) {
    if (project === undefined || !projects.includes(project.id)) continue;
    for (const { file, address } of entries) {
      const path = new URL(address).pathname.slice(home.length);
      const html = await readFile(join(folder, path, 'index.html'), 'utf8');
      texts[file] = entryOfPage(html, { address, words });
    }
  }
  return texts;
}
