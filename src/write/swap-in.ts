import {
  access,
  constants,
  mkdir,
  open,
  realpath,
  rename,
  rm,
  stat,
  writeFile,
} from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** A file that is whole beside the one whose place it takes. */
export interface Fresh {
  readonly path: string;
  readonly target: string;
}

/** How a file is written beside its place. */
export interface BesideOptions {
  /** Who may read it; without this, those who could before. */
  readonly mode?: number | undefined;
  /** Tells apart those who write the same file at once; not needed under a lock, where what a killed process left is written over. */
  readonly writer?: string | number;
}

/** Where the bytes that a file will have are written: beside it, under a name that is not read. A link is followed to its file. */
export async function placeOf(path: string, writer?: string | number): Promise<Fresh> {
  const target = await realpath(path).catch(() => path);
  const name = [basename(target), ...(writer === undefined ? [] : [writer]), 'new'].join('.');
  return { path: join(dirname(target), `.${name}`), target };
}

/** Writes bytes beside a file and waits until they are on the disk. */
export async function writeBeside(
  path: string,
  bytes: string | Uint8Array,
  { mode: wanted, writer }: BesideOptions = {},
): Promise<Fresh> {
  const { path: fresh, target } = await placeOf(path, writer);
  const found = await stat(target).catch(() => undefined);
  // A name can be swapped where the file itself is closed to us; whoever closed it meant it.
  if (found) await access(target, constants.W_OK);
  const mode = wanted ?? (found && found.mode & 0o777);
  await mkdir(dirname(target), { recursive: true });
  // Never through a link: what lies under that name is a killed process's, or nobody's.
  await rm(fresh, { force: true });
  const file = await open(fresh, 'wx', mode);
  try {
    await file.writeFile(bytes);
    if (mode !== undefined) await file.chmod(mode);
    await file.sync();
  } catch (error) {
    await file.close().catch(() => {});
    await rm(fresh, { force: true });
    return named(target)(error as Error);
  }
  await file.close();
  return { path: fresh, target };
}

/** Puts a file that is whole in its place. */
export async function swapIn({ path, target }: Fresh): Promise<void> {
  await rename(path, target);
  await syncFolder(dirname(target));
}

/** Writes a file so that at any moment it is there whole, as it was or as it will be. */
export async function writeWhole(
  path: string,
  bytes: string | Uint8Array,
  options: BesideOptions = {},
): Promise<void> {
  const fresh = await writeBeside(path, bytes, options);
  try {
    await swapIn(fresh);
  } catch (error) {
    await rm(fresh.path, { force: true });
    throw error;
  }
}

let derived = 0;

/**
 * Writes a file that can be made again: whole too, but nobody waits until it is on the disk, and several may write it at once, in one
 * process or in many.
 */
export async function writeDerived(path: string, bytes: string | Uint8Array): Promise<void> {
  const fresh = `${path}.${process.pid}-${derived++}.new`;
  await mkdir(dirname(path), { recursive: true });
  try {
    await writeFile(fresh, bytes);
    await rename(fresh, path);
  } catch (error) {
    await rm(fresh, { force: true });
    return named(path)(error as Error);
  }
}

/** Puts a path to an error: what fails at an open file does not say which. */
export function named(path: string): (error: Error) => never {
  return (error) => {
    throw Object.assign(error, { path });
  };
}

/** Waits until a folder's names are on the disk; not every system lets a folder be opened for that. */
export async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r').catch(() => undefined);
  await handle?.sync().catch(() => {});
  await handle?.close();
}
