import { cpSync } from 'node:fs';
import { join } from 'node:path';
import type { ReadContent } from '../read/content.ts';
import { handContent } from '../site/pages-here.ts';
import type { PageProgram } from './page-program.ts';
import type { WantedPart } from './ready.ts';
import { renderPages } from './render-pages.ts';

/**
 * Makes the pages that belong to no project in a new folder, of content that is read already, and beside them those of some projects. Throws with what a page says that breaks.
 */
export async function renderSharedPages(
  target: string,
  program: PageProgram,
  { content, beside }: { content: ReadContent; beside: readonly WantedPart[] },
): Promise<void> {
  const ids = beside.map(({ id }) => id);
  handContent(content);
  try {
    await renderPages(program, ids, target);
  } finally {
    handContent(undefined);
  }
  cpSync(join(program.folder, 'site/assets'), join(target, 'assets'), { recursive: true });
}
