import { copyFile, link, open, rename, rm } from 'node:fs/promises';
import { type BesideOptions, placeOf, writeBeside } from './swap-in.ts';

/** Writes a file whole under a name that nobody has, and says whether it was free. */
export async function writeNew(
  path: string,
  bytes: string | Uint8Array,
  options: BesideOptions = {},
): Promise<boolean> {
  const fresh = await writeBeside(path, bytes, options);
  try {
    return await placeFile(fresh.path, path);
  } finally {
    await rm(fresh.path, { force: true });
  }
}

/** Puts a whole file under a name if that is free, and says whether it was. */
export async function placeFile(whole: string, path: string): Promise<boolean> {
  try {
    await link(whole, path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
  }
  return placeCopy(whole, path);
}

/** Across file systems, and on one without links, it is copied beside its place; an empty file takes the name first, so that it is nobody else's. */
async function placeCopy(whole: string, path: string): Promise<boolean> {
  const { path: beside } = await placeOf(path);
  try {
    await copyFile(whole, beside);
    await (await open(path, 'wx')).close();
    await rename(beside, path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  } finally {
    await rm(beside, { force: true });
  }
}
