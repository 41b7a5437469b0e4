import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { liesIn } from '../write/lies-in.ts';
import { type Busy, withLockFile } from '../write/lock.ts';
import { cacheDir, workDir } from './folders.ts';

/** How long one waits for a cache that builds with work folders of their own share. */
const CACHE_WAIT = 600_000;

/**
 * Does something as the only one who makes derived files: in the work folder, and in a cache outside of it unless others may add to it
 * meanwhile. Builds with work folders of their own run side by side.
 */
export async function aloneInWork<Result>(
  what: string,
  act: () => Promise<Result>,
  { waitMs = 0, sharesCache = false }: { waitMs?: number; sharesCache?: boolean } = {},
): Promise<Result | Busy> {
  const shared = !sharesCache && !liesIn(workDir, cacheDir);
  const inCache = shared ? () => locked(cacheDir, what, act, CACHE_WAIT) : act;
  return locked(workDir, what, inCache, waitMs);
}

async function locked<Result>(
  folder: string,
  what: string,
  act: () => Promise<Result>,
  waitMs: number,
): Promise<Result | Busy> {
  await mkdir(folder, { recursive: true });
  return withLockFile(join(folder, 'build.lock'), what, act, waitMs);
}
