import { join } from 'node:path';
import type { Book } from '../book/types.ts';
import { wholeNumbers } from '../dossier/identity.ts';
import { contentDir, siteDir, workDir } from '../site/folders.ts';
import { findLeaks } from './leaks.ts';
import type { PageProgram } from './page-program.ts';
import type { ProjectPages } from './project-pages.ts';
import type { ReadyContent } from './ready.ts';
import { replaceFolder } from './replace-folder.ts';
import { joinParts, renderSharedPages } from './shared-pages.ts';
import { lap } from './stages.ts';
import { writeFeeds } from './write-feeds.ts';
import { writeSearch } from './write-search.ts';

/** Puts the site together in a new folder, looks it over and swaps it in. Throws what was wrong with it, in which case all is as it was. */
export async function finishSite(
  ready: ReadyContent,
  pages: ProjectPages,
  program: PageProgram,
): Promise<void> {
  const { content, book, stillSame } = ready;
  const target = await replaceFolder(siteDir, workDir);
  try {
    await Promise.all([
      pages.make(program, 'large'),
      renderSharedPages(target.fresh, program, { content, besides: pages.small, keep: pages.keep }),
    ]);
    const parts = await pages.parts();
    lap('pages');
    joinParts(target.fresh, parts, join(workDir, 'public'));
    lap('join');
    const texts = new Map(parts.flatMap((part) => Object.entries(part.texts)));
    await writeFeeds(target.fresh, book, texts);
    lap('feeds');
    await writeSearch(target.fresh, book);
    lap('search');
    const leaks = await findLeaks(target.fresh, contentDir, identityTexts(book));
    lap('leaks');
    if (leaks.length > 0) throw new Error(`these files must not be published: ${leaks.join(', ')}`);
    await stillSame();
    await target.swapIn();
    lap('swap');
  } finally {
    await target.discard();
  }
}

/** The numbers that say which machine it is, whole: no page may have one. */
function identityTexts({ projects }: Book): string[] {
  return projects
    .flatMap((project) => [project.info.machine.identity, ...wholeNumbers(project)])
    .filter((text) => text !== undefined);
}
