import type { ReadContent } from '../read/content.ts';
import type { Problem } from '../read/problem.ts';
import { readIndex } from './cache.ts';
import { lookAt } from './look.ts';
import { shownPhotos } from './shown.ts';

/** What is wrong with the files of photos that are shown, as far as their heads tell; deriving them may find more. */
export async function photoProblems(
  content: ReadContent,
  contentDir: string,
  cacheDir: string,
): Promise<readonly Problem[]> {
  const shown = content.projects.flatMap(({ id, entries, photos, lists }) =>
    shownPhotos({
      id,
      entries: entries.map(({ body }) => body),
      readings: lists.readings.map(({ value }) => value),
      photos,
      photoRecords: lists.photos.map(({ value }) => value),
    }),
  );
  return (await lookAt(shown, contentDir, await readIndex(cacheDir))).problems;
}
