// Makes the derived sizes of photos, as a build does before it makes pages: a program of its own, to be killed.
import { openBook } from '../../src/book/open.ts';
import { derivePhotos } from '../../src/photo/derive.ts';
import { cacheDir, contentDir, workDir } from '../../src/site/folders.ts';
import { aloneInWork } from '../../src/site/work-lock.ts';

const done = await aloneInWork('derive', async () => {
  const book = await openBook(contentDir, { now: new Date() });
  return derivePhotos(book, { contentDir, workDir, cacheDir });
});
if ('busy' in done) throw new Error(done.busy);
