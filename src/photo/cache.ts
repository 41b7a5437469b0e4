import { mkdir, readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { placeFile } from '../write/place-file.ts';
import { writeDerived } from '../write/swap-in.ts';
import type { Glance } from './glance.ts';

/** What is known of an original without reading it again. */
export interface KnownOriginal extends Glance {
  /** Size and times of the file when it was read. */
  readonly stamp: string;
  /** SHA-256 of the whole file, in hexadecimal. */
  readonly sha256: string;
  /** Name of what was done to it last, and the mean colour of the outcome. */
  readonly recipe: string;
  readonly colour: string;
}

/** Known originals by `<project>/<file name>`. */
export type PhotoIndex = Readonly<Record<string, KnownOriginal>>;

/** Raise it when what is noted of an original changes. */
const VERSION = 1;

/**
 * Derived pictures under the hash of their original and recipe, and an index of the originals. Nothing in it depends on where it lies,
 * so that another machine can take it along; without it everything is made again.
 */
export interface PhotoCache {
  readonly folder: string;
  /** Names of the derived pictures that are there. */
  readonly files: Set<string>;
  readonly index: PhotoIndex;
}

/** Opens the cache in a folder; one that is missing or broken is an empty one. */
export async function openCache(cacheDir: string): Promise<PhotoCache> {
  const folder = join(cacheDir, 'photos');
  await mkdir(folder, { recursive: true });
  return { folder, files: new Set(await readdir(folder)), index: await readIndex(cacheDir) };
}

/** What is known of originals; only reads. */
export async function readIndex(cacheDir: string): Promise<PhotoIndex> {
  try {
    const kept = JSON.parse(await readFile(join(cacheDir, 'photos.json'), 'utf8'));
    return kept.version === VERSION ? kept.originals : {};
  } catch {
    return {};
  }
}

/** Notes what is known of originals. */
export async function writeIndex(cacheDir: string, originals: PhotoIndex): Promise<void> {
  await writeDerived(
    join(cacheDir, 'photos.json'),
    JSON.stringify({ version: VERSION, originals }),
  );
}

/** Makes `folder` hold exactly these files of the cache. */
export async function publish(
  cache: PhotoCache,
  folder: string,
  wanted: ReadonlySet<string>,
): Promise<void> {
  await mkdir(folder, { recursive: true });
  const there = new Set(await readdir(folder));
  await Promise.all(
    [...there].filter((file) => !wanted.has(file)).map((file) => rm(join(folder, file))),
  );
  // One file under two names costs nothing; across disks it is copied.
  for (const file of wanted)
    if (!there.has(file)) await placeFile(join(cache.folder, file), join(folder, file));
}

/** What is noted of originals from now on: those made or found ready, and others that still lie in their folder. */
export function keptOriginals(
  before: PhotoIndex,
  ready: ReadonlyMap<string, KnownOriginal>,
  lies: (key: string) => boolean,
): PhotoIndex {
  const others = Object.entries(before).filter(([key]) => lies(key));
  return Object.fromEntries([...others, ...ready]);
}

/** Removes from the cache what belongs to no noted original as it is derived now, and what a broken-off run left. */
export async function prune(
  cache: PhotoCache,
  wanted: ReadonlySet<string>,
  originals: PhotoIndex,
): Promise<void> {
  const stems = new Set(Object.values(originals).map(stemOf));
  const stale = [...cache.files].filter(
    (file) => !wanted.has(file) && !stems.has(/^(\w+-\w+)-\d+\.\w+$/.exec(file)?.[1] ?? ''),
  );
  await Promise.all(stale.map((file) => rm(join(cache.folder, file), { force: true })));
}

/** How the names of all files derived from an original start: what it is, and what was done to it. */
export function stemOf({ sha256, recipe }: KnownOriginal): string {
  return `${sha256.slice(0, 16)}-${recipe}`;
}
