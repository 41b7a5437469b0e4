// A process of its own that makes the pages of some projects; the build starts it, and says of which.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { addressesOf } from '../publish/address.ts';
import { entryOfPage } from '../publish/plain-html.ts';
import { listContent } from '../read/files.ts';
import { contentDir } from '../site/folders.ts';
import { aboutSite } from '../site/prepare.ts';
import { runAstro } from './run-astro.ts';

/** What was made: the folder that the pages are in, and the text of each entry for feeds by the path of its file. */
export interface Made {
  readonly site: string;
  readonly texts: Readonly<Record<string, string>>;
}

/** What the build is told at the end. */
export type Rendered = Made | { readonly failure: string };

const [scratch = '', ...projects] = process.argv.slice(2);
// The way to the build is closed once all has gone through it.
process.send?.(await render(), () => process.disconnect());

async function render(): Promise<Rendered> {
  try {
    const site = await runAstro(projects, scratch);
    return { site, texts: await entryTexts(site) };
  } catch (error) {
    return { failure: (error as Error).message };
  }
}

/** The text of each entry for feeds, taken from its finished page so that both say the same. */
async function entryTexts(site: string): Promise<Record<string, string>> {
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
