import { join } from 'node:path';
import type { Book } from '../book/types.ts';
import { findLeaks } from '../cli/leaks.ts';
import { replaceFolder } from '../cli/replace-folder.ts';
import { lap } from '../cli/stages.ts';
import { writeFeeds } from '../cli/write-feeds.ts';
import { writeSearch } from '../cli/write-search.ts';
import { wholeNumbers } from '../dossier/identity.ts';
import { contentDir, siteDir, workDir } from '../site/folders.ts';
import { stateOf } from './part-key.ts';
import type { Part } from './part-store.ts';
import type { ReadyContent } from './ready-content.ts';
import { clearScratch } from './scratch.ts';
import { joinParts, renderSharedPages } from './shared-pages.ts';

/** Puts the site together in a new folder, looks it over and swaps it in. Gives what was wrong with it, in which case all is as it was. */
export async function finishSite(
  { state, content, book }: ReadyContent,
  parts: Promise<readonly Part[]>,
): Promise<string | undefined> {
  await clearScratch();
  const target = await replaceFolder(siteDir, workDir);
  try {
    const [made] = await Promise.all([parts, renderSharedPages(target.fresh, content)]);
    lap('pages');
    await joinParts(target.fresh, made, join(workDir, 'public'));
    lap('join');
    const texts = new Map(made.flatMap((part) => Object.entries(part.texts)));
    await writeFeeds(target.fresh, book, texts);
    lap('feeds');
    await writeSearch(target.fresh, book);
    lap('search');
    const leaks = await findLeaks(target.fresh, contentDir, identityTexts(book));
    if (leaks.length > 0) throw new Error(`these files must not be published: ${leaks.join(', ')}`);
    lap('leaks');
    if ((await stateOf(contentDir)).hash !== state.hash) throw new Error(CHANGED);
    await target.swapIn();
    lap('swap');
    return undefined;
  } catch (error) {
    await target.discard();
    return (error as Error).message;
  }
}

/** What is said when pages may be of two states of the content. */
export const CHANGED = 'the content changed while it was built; run it again';

/** The numbers that say which machine it is, whole: no page may have one. */
function identityTexts({ projects }: Book): string[] {
  return projects
    .flatMap((project) => [project.info.machine.identity, ...wholeNumbers(project)])
    .filter((text) => text !== undefined);
}
