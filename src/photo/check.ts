import type { ReadContent } from '../read/content.ts';
import { heldPhotos } from '../read/held-photos.ts';
import type { Problem } from '../read/problem.ts';
import { readIndex } from './cache.ts';
import { halvesOf } from './halves.ts';
import { lookAt } from './look.ts';
import { shownPairs } from './pairs.ts';
import { shownPhotos } from './shown.ts';

/** What is wrong with the files of photos that are shown, as far as their heads tell; deriving them may find more. */
export async function photoProblems(
  content: ReadContent,
  contentDir: string,
  cacheDir: string,
): Promise<readonly Problem[]> {
  const index = await readIndex(cacheDir);
  const projects = content.projects.map((project) => {
    const { id, entries, photos, lists } = project;
    const held = heldPhotos(project);
    return {
      id,
      entries: entries.map(({ body }) => body),
      readings: lists.readings.map(({ value }) => value),
      findings: lists.findings.map(({ value }) => value),
      photos: photos.filter((file) => !held.has(file)),
      photoRecords: lists.photos.map(({ value }) => value),
    };
  });
  const seen = await lookAt(projects.flatMap(shownPhotos), contentDir, index);
  const halves = halvesOf(projects.flatMap(shownPairs), seen.photos, index);
  return [...seen.problems, ...halves.problems];
}
