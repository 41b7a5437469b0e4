import { cpSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { ReadContent } from '../read/content.ts';
import { handContent } from '../site/pages-here.ts';
import { entryTexts } from './entry-texts.ts';
import type { Part } from './part-store.ts';
import type { KeepPages, WantedPart } from './render-parts.ts';
import { runAstro } from './run-astro.ts';
import { inScratch, moveFolder } from './scratch.ts';

/**
 * Makes the pages that belong to no project in a new folder, of content that is read already, and those of some projects on the way.
 * Throws with what Astro says when one breaks.
 */
export async function renderSharedPages(
  target: string,
  {
    content,
    besides,
    keep,
  }: { content: ReadContent; besides: readonly WantedPart[]; keep: KeepPages },
): Promise<void> {
  const ids = besides.map(({ id }) => id);
  handContent(content);
  try {
    await inScratch('shared', async (scratch) => {
      const site = await runAstro(ids, scratch);
      if (ids.length > 0) await keep(site, besides, await entryTexts(site, ids));
      await moveFolder(site, target);
    });
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
  const there = new Set(await readdir(join(site, 'assets')));
  for (const { folder, assets } of parts) {
    const lacking = assets.filter((name) => !there.has(name));
    if (lacking.length > 0) throw new Error(`this is our bug: no assets ${lacking.join(', ')}`);
    // Tens of thousands of files: one after the other, through promises, takes six times as long.
    cpSync(join(folder, 'site'), site, { recursive: true });
  }
  cpSync(publicDir, site, { recursive: true });
}
