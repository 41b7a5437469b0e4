import { cpSync } from 'node:fs';
import { join } from 'node:path';
import type { ReadContent } from '../read/content.ts';
import { handContent } from '../site/pages-here.ts';
import { entryTexts } from './entry-texts.ts';
import type { Part } from './keep-pages.ts';
import type { PageProgram } from './page-program.ts';
import { renderPages } from './render-pages.ts';
import type { KeepPages, WantedPart } from './render-parts.ts';

/**
 * Makes the pages that belong to no project in a new folder, of content that is read already, and those of some projects on the way.
 * Throws with what a page says that breaks.
 */
export async function renderSharedPages(
  target: string,
  program: PageProgram,
  {
    content,
    besides,
    keep,
  }: { content: ReadContent; besides: readonly WantedPart[]; keep: KeepPages },
): Promise<void> {
  const ids = besides.map(({ id }) => id);
  handContent(content);
  try {
    await renderPages(program, ids, target);
  } finally {
    handContent(undefined);
  }
  if (ids.length > 0) await keep(target, besides, await entryTexts(target, ids));
  cpSync(join(program.folder, 'site/assets'), join(target, 'assets'), { recursive: true });
}

/** Puts finished pages and the published photos beside the pages that belong to no project. */
export function joinParts(site: string, parts: readonly Part[], publicDir: string): void {
  // Tens of thousands of files: one after the other, through promises, takes six times as long.
  for (const { folder } of parts) cpSync(join(folder, 'site'), site, { recursive: true });
  cpSync(publicDir, site, { recursive: true });
}
