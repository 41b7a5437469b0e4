import { readFile, rm } from 'node:fs/promises';
import { swapIn, writeBeside } from '../write/swap-in.ts';
import type { ChangedFile } from './mend-content.ts';

/** Puts a file's new bytes in its place, whole or not at all; says why where somebody else has changed it meanwhile. */
export async function replaceFile(
  path: string,
  { before, after }: ChangedFile,
): Promise<string | undefined> {
  const fresh = await writeBeside(path, after);
  if ((await readFile(path)).equals(before)) {
    await swapIn(fresh);
    return undefined;
  }
  await rm(fresh.path);
  return `${path} was changed meanwhile and is left as it is. Run the command again.`;
}
