import { mkdir, open, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** A file that is whole beside the one whose place it takes. */
export interface Fresh {
  readonly path: string;
  readonly target: string;
}

/** Where the bytes that a file will have are written: beside it, under a name that is not read. A link is followed to its file. */
export async function placeOf(path: string): Promise<Fresh> {
  const target = await realpath(path).catch(() => path);
  return { path: join(dirname(target), `.${basename(target)}.new`), target };
}

/** Writes bytes beside a file and waits until they are on the disk. */
export async function writeBeside(path: string, bytes: Uint8Array): Promise<Fresh> {
  const { path: fresh, target } = await placeOf(path);
  const mode = await stat(target).then(
    (found) => found.mode & 0o777,
    () => 0o644,
  );
  await mkdir(dirname(target), { recursive: true });
  const file = await open(fresh, 'w', mode);
  try {
    await file.writeFile(bytes);
    await file.chmod(mode);
    await file.sync();
  } catch (error) {
    await file.close();
    await rm(fresh, { force: true });
    throw error;
  }
  await file.close();
  return { path: fresh, target };
}

/** Puts a file that is whole in its place. */
export async function swapIn({ path, target }: Fresh): Promise<void> {
  await rename(path, target);
  await syncFolder(dirname(target));
}

/** Waits until a folder's names are on the disk; not every system lets a folder be opened for that. */
export async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r').catch(() => undefined);
  await handle?.sync().catch(() => {});
  await handle?.close();
}
