import { readdir, readFile, stat, unlink } from 'node:fs/promises';
import { join } from 'node:path';
import { saveWhole } from './state-folder.ts';

/** How long a picture waits for the item that names it. */
const KEPT_DAYS = 30;

/** Most pictures that wait at a time, so that a phone gone wild does not fill the disk. */
const MOST_WAITING = 200;

const folderOf = (state: string) => join(state, 'pictures');

/** Keeps a picture until its item comes; false when too many wait already. A second one under the same id takes the place of the first. */
export async function stage(state: string, id: string, bytes: Uint8Array): Promise<boolean> {
  const waiting = await readdir(folderOf(state)).catch((): string[] => []);
  if (waiting.length >= MOST_WAITING && !waiting.includes(`${id}.jpg`)) return false;
  await saveWhole(join(folderOf(state), `${id}.jpg`), bytes);
  return true;
}

/** A picture that waits, or undefined. */
export function staged(state: string, id: string): Promise<Buffer | undefined> {
  return readFile(join(folderOf(state), `${id}.jpg`)).catch(() => undefined);
}

/** Drops a picture whose item is written. */
export async function unstage(state: string, id: string): Promise<void> {
  await unlink(join(folderOf(state), `${id}.jpg`)).catch(() => {});
}

/** Drops pictures whose item never came. */
export async function dropOldStaged(state: string, now: Date): Promise<void> {
  for (const name of await readdir(folderOf(state)).catch(() => [])) {
    const path = join(folderOf(state), name);
    const { mtimeMs } = await stat(path);
    if (now.getTime() - mtimeMs > KEPT_DAYS * 86_400_000) await unlink(path);
  }
}
