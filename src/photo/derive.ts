import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Book } from '../book/types.ts';
import type { Problem } from '../read/problem.ts';
import { writeDerived } from '../write/swap-in.ts';
import {
  type KnownOriginal,
  keptOriginals,
  openCache,
  type PhotoCache,
  prune,
  publish,
  readIndex,
  writeIndex,
} from './cache.ts';
import { eachOf } from './each.ts';
import { halvesOf } from './halves.ts';
import { lookAt, problemOf, type SeenPhoto } from './look.ts';
import { filesOf, make, published } from './make.ts';
import type { PhotoManifest } from './manifest.ts';
import { shownPairs } from './pairs.ts';
import { type Listener, showProgress } from './progress.ts';
import { isEdited, recipeName } from './recipe.ts';
import { shownPhotos } from './shown.ts';

/** Where originals are, where the site finds the derived pictures, and where these are kept between runs. */
export interface PhotoFolders {
  readonly contentDir: string;
  readonly workDir: string;
  readonly cacheDir: string;
}

/** How photos are derived. */
export interface DeriveOptions {
  /** Reads every original again, whatever its size and times say. */
  readonly verify?: boolean;
  /** The projects whose photos are wanted, while other runs may see to the others; all without it. */
  readonly only?: readonly string[] | undefined;
  /** Who is told how far it is. */
  readonly listener?: Listener;
}

/** Pixels of edited photos that are in memory at once; such a photo is there at its full size. */
const PIXELS_AT_ONCE = 30_000_000;

/** Pixels that a photo holds in memory which is made smaller while it is decoded. */
const PLAIN_PIXELS = 5_000_000;

/** Milliseconds after which what is known is noted, so that an interrupted run does not start over. */
const NOTE_EVERY = 5_000;

/**
 * Makes the published sizes of every photo that is shown, in `<workDir>/public/photos`, and lists them in `<workDir>/photos.json`.
 * Only what the cache lacks is made. The originals are only read.
 */
export async function derivePhotos(
  book: Book,
  { contentDir, workDir, cacheDir }: PhotoFolders,
  { verify = false, only, listener }: DeriveOptions = {},
): Promise<Problem[]> {
  const cache = await openCache(cacheDir);
  const projects = book.projects.filter(({ id }) => only?.includes(id) ?? true);
  const shown = projects.flatMap((project) =>
    shownPhotos({ ...project, readings: project.readings.map(({ reading }) => reading) }),
  );
  const index = verify ? {} : cache.index;
  const seen = await lookAt(shown, contentDir, index);
  const halves = halvesOf(projects.flatMap(shownPairs), seen.photos, index);
  const photos = [...seen.photos, ...halves.photos];
  const ready = new Map<string, KnownOriginal>(
    photos.flatMap((photo) => (isReady(photo, cache) ? [[photo.key, photo.known]] : [])),
  );
  const jobs = photos.filter(({ key }) => !ready.has(key));
  const broken = await workThrough(jobs, { cache, cacheDir, ready, listener });

  const manifest = Object.fromEntries(
    photos.flatMap((photo) => {
      const original = ready.get(photo.key);
      return original ? [[photo.key, published(photo, original)]] : [];
    }),
  ) satisfies PhotoManifest;
  const lies = new Set(
    book.projects.flatMap(({ id, photos }) => photos.map((name) => `${id}/${name}`)),
  );
  const wanted = new Set(Object.values(manifest).flatMap(({ sizes }) => filesOf(sizes)));
  const originals = keptOriginals(cache.index, ready, (key) => lies.has(key));
  // What another run noted meanwhile stays.
  await writeIndex(cacheDir, only ? { ...(await readIndex(cacheDir)), ...originals } : originals);
  await publish(cache, join(workDir, 'public', 'photos'), wanted);
  if (!only) await prune(cache, wanted, originals);
  await writeDerived(join(workDir, 'photos.json'), JSON.stringify(manifest));
  return [...seen.problems, ...halves.problems, ...broken];
}

function isReady(
  photo: SeenPhoto,
  cache: PhotoCache,
): photo is SeenPhoto & { known: KnownOriginal } {
  const { known } = photo;
  if (known?.recipe !== recipeName(photo.record ?? {}, photo.frame)) return false;
  return filesOf(published(photo, known).sizes).every((file) => cache.files.has(file));
}

/** Makes the sizes of photos, over all cores; those done are put into `ready`. Gives the problems of those that can't be made. */
async function workThrough(
  jobs: readonly SeenPhoto[],
  {
    cache,
    cacheDir,
    ready,
    listener,
  }: {
    cache: PhotoCache;
    cacheDir: string;
    ready: Map<string, KnownOriginal>;
    listener: Listener | undefined;
  },
): Promise<Problem[]> {
  const cores = availableParallelism();
  // AVIF is cut into as many tiles as an encoder has threads, so that with more than one the bytes would depend on the cores.
  // Every core has its photo, since `run.mjs` makes the pool below the image library as large.
  sharp.concurrency(1);
  sharp.cache(false);
  const problems: Problem[] = [];
  const progress = listener && showProgress('Photos', jobs.length, listener);
  let notedAt = performance.now();
  await eachOf(jobs, { items: cores, weight: PIXELS_AT_ONCE }, pixelsOf, async (photo) => {
    try {
      ready.set(photo.key, await make(photo, cache));
    } catch (error) {
      problems.push(await problemOf(photo.file, photo.path, error));
    }
    progress?.step();
    if (performance.now() - notedAt < NOTE_EVERY) return;
    notedAt = performance.now();
    await writeIndex(cacheDir, { ...cache.index, ...Object.fromEntries(ready) });
  });
  progress?.end();
  return problems;
}

function pixelsOf({ record, glance, frame }: SeenPhoto): number {
  return frame || isEdited(record ?? {}) ? glance.width * glance.height : PLAIN_PIXELS;
}
