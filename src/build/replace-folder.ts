import { existsSync } from 'node:fs';
import { access, constants, cp, mkdir, readdir, realpath, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { withLockFile } from '../write/lock.ts';

/** A folder that is being made anew beside the one in use. */
export interface Replacement {
  /** Where to write. */
  readonly fresh: string;
  /** Puts the new folder in the place of the old one. */
  swapIn(): Promise<void>;
  /** Throws the new folder away. */
  discard(): Promise<void>;
}

/** Where the new and the old folder are while they change places. */
interface Places {
  readonly fresh: string;
  readonly old: string;
}

/** How long one waits for another build, with a work folder of its own, that changes places in the same folder. */
const SWAP_WAIT = 60_000;

/**
 * Starts a replacement of a folder, kept in the work folder until it is whole. A link is followed. What a run that was killed left behind
 * is cleared away first.
 */
export async function replaceFolder(linked: string, workDir: string): Promise<Replacement> {
  await putBack(linked, workDir);
  const folder = await realpath(linked).catch(() => linked);
  await mkdir(workDir, { recursive: true });
  await mkdir(dirname(folder), { recursive: true });
  // Better known now than when all pages are made.
  await access(dirname(folder), constants.W_OK);
  const name = basename(folder);
  await rm(oldIn(workDir, folder), { recursive: true, force: true });
  for (const item of await readdir(workDir))
    if (item.startsWith(`${name}-new-`)) await rm(join(workDir, item), { recursive: true });

  const near = { fresh: join(workDir, `${name}-new-${process.pid}`), old: oldIn(workDir, folder) };
  // Where a build broke, some of it may be writing still.
  const discard = () => rm(near.fresh, { recursive: true, force: true, maxRetries: 20 });
  return {
    fresh: near.fresh,
    swapIn: () => alone(folder, () => swapOver(folder, near)).finally(discard),
    discard,
  };
}

/** Brings the old folder back where a run was killed between its two renames. */
export async function putBack(linked: string, workDir: string): Promise<void> {
  const folder = await realpath(linked).catch(() => linked);
  const { fresh, old: far } = beside(folder);
  const near = oldIn(workDir, folder);
  if (![near, far, fresh].some(existsSync)) return;
  await alone(folder, async () => {
    for (const old of [near, far])
      if (existsSync(old) && !existsSync(folder)) await rename(old, folder);
    for (const left of [far, fresh]) await rm(left, { recursive: true, force: true });
  });
}

/** Two builds with work folders of their own may have one site: only one at a time changes places in it. */
async function alone(folder: string, act: () => Promise<void>): Promise<void> {
  await mkdir(dirname(folder), { recursive: true });
  const done = await withLockFile(`${beside(folder).fresh}.lock`, 'build', act, SWAP_WAIT);
  if (done) throw new Error(done.busy);
}

/** Across file systems no folder can be renamed: the new one is copied beside its place first. */
async function swapOver(folder: string, near: Places): Promise<void> {
  try {
    return await swap(folder, near);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EXDEV') throw error;
  }
  const far = beside(folder);
  try {
    await cp(near.fresh, far.fresh, { recursive: true });
    await swap(folder, far);
  } finally {
    await rm(far.fresh, { recursive: true, force: true });
  }
}

async function swap(folder: string, { fresh, old }: Places): Promise<void> {
  if (existsSync(folder)) await rename(folder, old);
  try {
    await rename(fresh, folder);
  } catch (error) {
    if (existsSync(old)) await rename(old, folder);
    throw error;
  }
  await rm(old, { recursive: true, force: true });
}

function oldIn(workDir: string, folder: string): string {
  return join(workDir, `${basename(folder)}-old`);
}

function beside(folder: string): Places {
  const start = join(dirname(folder), `.${basename(folder)}.tmp`);
  return { fresh: `${start}.new`, old: `${start}.old` };
}
