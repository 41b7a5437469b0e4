import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { addressesOf } from '../publish/address.ts';
import { entryOfPage } from '../publish/plain-html.ts';
import { listContent } from '../read/files.ts';
import { contentDir } from '../site/folders.ts';
import { aboutSite } from '../site/prepare.ts';

/** Texts of entries by the paths of their files. */
export type EntryTexts = Readonly<Record<string, string>>;

/** The text of each entry of some projects as feeds have it, taken from its finished page so that both say the same. */
export async function entryTexts(site: string, projects: readonly string[]): Promise<EntryTexts> {
  const { address, words } = await aboutSite();
  const to = addressesOf(address);
  const listed = await listContent(contentDir, { projects });
  const texts: Record<string, string> = {};
  for (const file of listed.projects.flatMap(({ entries }) => entries)) {
    const path = file.replace('/entries/', '/log/').replace(/\.mdx$/, '/');
    const page = join(site, path, 'index.html');
    const html = await readFile(page, 'utf8').catch(() => undefined); // A draft has no page.
    if (html !== undefined)
      texts[file] = entryOfPage(html, { address: to.absolute(`${to.home()}${path}`), words });
  }
  return texts;
}
