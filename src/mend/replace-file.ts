import { open, readFile, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import type { ChangedFile } from './mend-content.ts';

/** Puts a file's new bytes in its place, whole or not at all; refuses when somebody else has changed it meanwhile. */
export async function replaceFile(
  path: string,
  { before, after }: ChangedFile,
): Promise<string | undefined> {
  // A name with a dot before it is not read, should it ever stay behind.
  const fresh = join(dirname(path), `.${basename(path)}.new`);
  const { mode } = await stat(path);
  const file = await open(fresh, 'w', mode & 0o777);
  try {
    await file.writeFile(after);
    await file.sync();
  } finally {
    await file.close();
  }
  if (!(await readFile(path)).equals(before)) {
    await rm(fresh);
    return `${path} was changed meanwhile and is left as it is. Run the command again.`;
  }
  await rename(fresh, path);
  return undefined;
}
