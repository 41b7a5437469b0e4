import { createHash } from 'node:crypto';
import { cp, mkdir, readdir, rename, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { isAlive, startOf } from '../write/process-alive.ts';

/** Inside the program's folder: Astro keeps its work files beside the pages only there, and what it bundles finds its packages from there. */
const FOLDER = resolve('.witnessmark', 'runs');

/** Calls a function with a new folder for making pages in, and removes it afterwards. */
export async function inScratch<Result>(
  name: string,
  use: (folder: string) => Promise<Result>,
): Promise<Result> {
  const folder = join(FOLDER, `${process.pid}-${await markOf(process.pid)}-${name}`);
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  try {
    return await use(folder);
  } finally {
    // Where a page broke, others may be writing still; what stays goes before the next run.
    await rm(folder, { recursive: true, force: true, maxRetries: 5 }).catch(() => {});
  }
}

/** Removes what runs that were killed left behind. */
export async function clearScratch(): Promise<void> {
  for (const name of await readdir(FOLDER).catch(() => [])) {
    const [number = '', mark] = name.split('-');
    const pid = Number(number);
    const alive = await isAlive({ pid, host: '', started: '' }, '');
    if (!alive || mark !== (await markOf(pid)))
      await rm(join(FOLDER, name), { recursive: true, force: true });
  }
}

/** Tells a process from a later one with its number; the same for all numbers where the system does not tell when one started. */
async function markOf(pid: number): Promise<string> {
  return createHash('sha256')
    .update(await startOf(pid))
    .digest('hex')
    .slice(0, 12);
}

/** Moves a folder, also to another disk. */
export async function moveFolder(from: string, to: string): Promise<void> {
  try {
    await rename(from, to);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EXDEV') throw error;
    await cp(from, to, { recursive: true });
    await rm(from, { recursive: true, force: true });
  }
}
