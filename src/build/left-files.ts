import { readdir, rm } from 'node:fs/promises';
import { join } from 'node:path';

/** What `writeDerived` puts beside a file before it takes its place. */
const BESIDE = /\.\d+-\d+\.new$/;

/** Removes what runs that were killed left beside the files they were writing, from a folder and the folders in it; nobody else may be writing there. */
export async function clearLeftFiles(folder: string): Promise<void> {
  const items = await readdir(folder, { withFileTypes: true }).catch(() => []);
  const inner = items.filter((item) => item.isDirectory()).map(({ name }) => name);
  for (const where of ['', ...inner])
    for (const name of await readdir(join(folder, where)).catch(() => []))
      if (BESIDE.test(name)) await rm(join(folder, where, name), { force: true });
}
