import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import type { Project } from '../book/types.ts';
import type { Day } from '../time/day.ts';
import { readIndex } from './cache.ts';
import { lookAt } from './look.ts';
import { shownPhotos } from './shown.ts';

/** What binds a claim to a photo that stays at home. */
export interface PhotoFact {
  /** File name in the project's `photos/`. */
  readonly file: string;
  /** SHA-256 of the whole original, in hexadecimal. */
  readonly sha256: string;
  /** Day it was taken, from its record or from the file itself. */
  readonly taken: Day | undefined;
  /** Size of the upright original in pixels. */
  readonly width: number;
  readonly height: number;
}

/** Facts of every photo of a project that is shown, by file name; a photo that can't be read has none. */
export async function photoFacts(
  project: Project,
  contentDir: string,
  cacheDir: string,
): Promise<PhotoFact[]> {
  const readings = project.readings.map(({ reading }) => reading);
  const shown = shownPhotos({ ...project, readings });
  const { photos } = await lookAt(shown, contentDir, await readIndex(cacheDir));
  const facts: PhotoFact[] = [];
  for (const { key, path, record, glance, known } of photos) {
    const { width, height } = glance;
    const sha256 = known?.sha256 ?? (await hashOf(path));
    const taken = record?.taken ?? glance.taken;
    facts.push({ file: key.slice(project.id.length + 1), sha256, taken, width, height });
  }
  return facts;
}

async function hashOf(path: string): Promise<string> {
  return createHash('sha256')
    .update(await readFile(path))
    .digest('hex');
}
