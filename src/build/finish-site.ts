import { cpSync } from 'node:fs';
import { join } from 'node:path';
import { contentDir, siteDir, workDir } from '../site/folders.ts';
import { noteBuilt } from './built-from.ts';
import { findLeaks } from './leaks.ts';
import { makeProjectPages, projectPages, stillSame } from './project-pages.ts';
import type { Ready } from './ready.ts';
import { replaceFolder } from './replace-folder.ts';
import { lap } from './stages.ts';
import { writeFeeds } from './write-feeds.ts';
import { writeSearch } from './write-search.ts';

/**
 * Makes what is missing, puts the site together in a new folder, looks it over and swaps it in, given the folder of the pages that belong
 * to no project. Throws what was wrong with it, in which case all is as it was.
 */
export async function finishSite(ready: Ready, shared: string): Promise<void> {
  const target = await replaceFolder(siteDir, workDir);
  try {
    await makeProjectPages(ready, shared);
    const parts = await projectPages(ready);
    lap('pages');
    const finished = parts.map(({ folder }) => join(folder, 'site'));
    // Tens of thousands of files: one after the other, through promises, takes six times as long.
    for (const folder of [shared, ...finished, join(workDir, 'public')])
      cpSync(folder, target.fresh, { recursive: true });
    lap('join');
    const texts = new Map(parts.flatMap((part) => Object.entries(part.texts)));
    await writeFeeds(target.fresh, ready.feeds, { site: ready.site, texts });
    lap('feeds');
    await writeSearch(target.fresh, ready);
    lap('search');
    const leaks = await findLeaks(target.fresh, contentDir, ready.secrets);
    lap('leaks');
    if (leaks.length > 0) throw new Error(`these files must not be published: ${leaks.join(', ')}`);
    await stillSame(ready);
    await target.swapIn();
    await noteBuilt(ready);
    lap('swap');
  } finally {
    await target.discard();
  }
}
