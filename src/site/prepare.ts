import { openBook } from '../book/open.ts';
import { derivePhotos } from '../photo/derive.ts';
import { readContent } from '../read/content.ts';
import { type Words, wordsOf } from '../words/words.ts';
import { refreshCrossChecks } from './cross-checks.ts';
import { cacheDir, contentDir, workDir } from './folders.ts';
import { aloneInWork } from './work-lock.ts';

/** A build makes the same files, without those of drafts; what is served waits for it. */
const BUILD_WAIT = 600_000;

/** The public address from site.yaml and the words of its language; a content folder without a usable one is told apart by the check, not here. */
export async function aboutSite(): Promise<{ address: string; words: Words }> {
  const { site } = await readContent(contentDir, { projects: [] });
  return {
    address: site?.value.address ?? 'https://site.invalid/',
    words: wordsOf(site?.value.language ?? 'en'),
  };
}

/** Derives photos and draws values that are new or changed, while the dev server runs. */
export async function refreshDerived(): Promise<void> {
  const book = await openBook(contentDir, { now: new Date(), drafts: true });
  const derive = async () => {
    await derivePhotos(book, { contentDir, workDir, cacheDir });
    await refreshCrossChecks(book.projects);
  };
  const done = await aloneInWork('dev', derive, { waitMs: BUILD_WAIT });
  if (done) throw new Error(done.busy);
}
