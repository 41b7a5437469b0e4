import { lstat, open } from 'node:fs/promises';
import { join } from 'node:path';
import type { Problem } from '../read/problem.ts';
import type { KnownOriginal, PhotoIndex } from './cache.ts';
import { eachOf } from './each.ts';
import type { Frame } from './frame.ts';
import { type Glance, glanceAt } from './glance.ts';
import { oddities, unreadable } from './problems.ts';
import type { ShownPhoto } from './shown.ts';

/** A photo whose head was read, now or in an earlier run. */
export interface SeenPhoto extends ShownPhoto {
  readonly path: string;
  readonly stamp: string;
  readonly glance: Glance;
  /** What an earlier run noted, when the file has not changed since. */
  readonly known: KnownOriginal | undefined;
  /** What it is laid into as a half of a pair. */
  readonly frame?: Frame;
}

/** Photos that can be read, in their order, and what is odd about these and wrong with the others. */
export interface Seen {
  readonly photos: readonly SeenPhoto[];
  readonly problems: readonly Problem[];
}

const AT_ONCE = { items: 8, weight: 8 };

/** Looks at the heads of photos; a file that has the size and times of an earlier run is not opened. */
export async function lookAt(
  photos: readonly ShownPhoto[],
  contentDir: string,
  index: PhotoIndex,
): Promise<Seen> {
  const seen = new Map<string, SeenPhoto | Problem>();
  await eachOf(
    photos,
    AT_ONCE,
    () => 1,
    async (photo) => {
      seen.set(photo.key, await lookAtOne(photo, join(contentDir, photo.file), index[photo.key]));
    },
  );
  const found = photos.flatMap(({ key }) => seen.get(key) ?? []);
  const readable = found.filter((item) => 'glance' in item);
  return {
    photos: readable,
    problems: [
      ...found.filter((item): item is Problem => !('glance' in item)),
      ...readable.flatMap((photo) => oddities(photo, photo.glance)),
    ],
  };
}

async function lookAtOne(
  photo: ShownPhoto,
  path: string,
  noted: KnownOriginal | undefined,
): Promise<SeenPhoto | Problem> {
  try {
    const about = await lstat(path);
    if (!about.isFile()) throw new Error('it is a link to a file elsewhere');
    // The time of the last change of the entry itself is part of it: a copy that keeps the other time is still noticed.
    const stamp = `${about.size}-${about.mtimeMs}-${about.ctimeMs}`;
    const known = noted?.stamp === stamp ? noted : undefined;
    return { ...photo, path, stamp, known, glance: known ?? (await glanceAt(path)) };
  } catch (error) {
    return problemOf(photo.file, path, error);
  }
}

/** What to say of a photo that the image library refuses. */
export async function problemOf(file: string, path: string, error: unknown): Promise<Problem> {
  const reason = (error as Error).message.split('\n')[0]?.replaceAll(path, file) ?? '';
  return unreadable(file, reason, await firstBytes(path));
}

async function firstBytes(path: string): Promise<Uint8Array> {
  // Whoever may not read the file gets no more than the reason.
  const file = await open(path).catch(() => undefined);
  if (file === undefined) return Buffer.alloc(0);
  try {
    const { buffer, bytesRead } = await file.read(Buffer.alloc(32), 0, 32, 0);
    return buffer.subarray(0, bytesRead);
  } finally {
    await file.close();
  }
}
