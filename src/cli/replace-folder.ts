import { existsSync } from 'node:fs';
import { mkdir, readdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

/** A folder that is being made anew beside the one in use. */
export interface Replacement {
  /** Where to write. */
  readonly fresh: string;
  /** Puts the new folder in the place of the old one. */
  swapIn(): Promise<void>;
  /** Throws the new folder away. */
  discard(): Promise<void>;
}

/**
 * Starts a replacement of `folder`, kept in `workDir` until it is whole.
 * What a run that was killed left behind is cleared away first; if it was killed between the two renames, the old folder comes back.
 */
export async function replaceFolder(folder: string, workDir: string): Promise<Replacement> {
  await mkdir(workDir, { recursive: true });
  const name = basename(folder);
  const old = join(workDir, `${name}-old`);
  if (existsSync(old) && !existsSync(folder)) await rename(old, folder);
  for (const item of await readdir(workDir)) {
    if (item !== `${name}-old` && !item.startsWith(`${name}-new-`)) continue;
    await rm(join(workDir, item), { recursive: true, force: true });
  }

  const fresh = join(workDir, `${name}-new-${process.pid}`);
  return {
    fresh,
    async swapIn() {
      await mkdir(dirname(folder), { recursive: true });
      if (existsSync(folder)) await rename(folder, old);
      await rename(fresh, folder);
      await rm(old, { recursive: true, force: true });
    },
    discard: () => rm(fresh, { recursive: true, force: true }),
  };
}
