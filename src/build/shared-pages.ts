import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import type { ReadContent } from '../read/content.ts';
import { handContent } from '../site/pages-here.ts';
import type { Part } from './part-store.ts';
import { runAstro } from './run-astro.ts';
import { inScratch, moveFolder } from './scratch.ts';

/** Makes the pages that belong to no project, of content that is read already, into a new folder. Throws with what Astro says when one breaks. */
export async function renderSharedPages(site: string, content: ReadContent): Promise<void> {
  handContent(content);
  try {
    await inScratch('shared', async (scratch) => moveFolder(await runAstro([], scratch), site));
  } finally {
    handContent(undefined);
  }
}

/** Puts finished pages and the published photos beside the pages that belong to no project. */
export async function joinParts(
  site: string,
  parts: readonly Part[],
  publicDir: string,
): Promise<void> {
  for (const { folder } of parts) await cp(join(folder, 'site'), site, { recursive: true });
  await cp(publicDir, site, { recursive: true });
}
