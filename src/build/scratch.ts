import { cp, mkdir, readdir, rename, rm } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join, resolve } from 'node:path';
import { isAlive, startOf } from '../write/process-alive.ts';

/** Inside the program's folder, since Astro keeps its work files beside the pages only there. */
const FOLDER = resolve('.witnessmark', 'runs');

/** Calls a function with a new folder for a run of Astro, and removes it afterwards. */
export async function inScratch<Result>(
  name: string,
  use: (folder: string) => Promise<Result>,
): Promise<Result> {
  const folder = join(FOLDER, `${process.pid}-${await startOf(process.pid)}-${name}`);
  await rm(folder, { recursive: true, force: true });
  await mkdir(join(folder, 'root'), { recursive: true });
  try {
    return await use(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Removes what runs that were killed left behind. */
export async function clearScratch(): Promise<void> {
  const host = hostname();
  for (const name of await readdir(FOLDER).catch(() => [])) {
    const [pid, started = ''] = name.split('-');
    if (!(await isAlive({ pid: Number(pid), host, started }, host)))
      await rm(join(FOLDER, name), { recursive: true, force: true });
  }
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
