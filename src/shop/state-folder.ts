import { createHash, randomBytes } from 'node:crypto';
import { mkdir, open, readFile, rename } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';

/** Where the bench page of a content folder keeps phones, codes, its journal and pictures on the way: one folder for each content folder. */
export function stateFolder(workDir: string, contentDir: string): string {
  const name = createHash('sha256').update(resolve(contentDir)).digest('hex').slice(0, 16);
  return join(workDir, 'bench-page', name);
}

/** Writes a file that only its owner may read, whole or not at all, and on the disk when it returns. */
export async function saveWhole(path: string, bytes: string | Uint8Array): Promise<void> {
  const folder = dirname(path);
  await mkdir(folder, { recursive: true, mode: 0o700 });
  const beside = `${path}.${randomBytes(6).toString('hex')}.new`;
  const file = await open(beside, 'wx', 0o600);
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(beside, path);
  await syncFolder(folder);
}

/** Sees to it that names made or changed in a folder outlive a power cut, where the system can. */
export async function syncFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r').catch(() => undefined);
  await handle?.sync().catch(() => {});
  await handle?.close();
}

/** What a JSON file holds; undefined where there is none. */
export async function readJson<T>(path: string): Promise<T | undefined> {
  const text = await textOf(path);
  return text === undefined ? undefined : (JSON.parse(text) as T);
}

/** The text of a file; undefined where there is none. */
export async function textOf(path: string): Promise<string | undefined> {
  return readFile(path, 'utf8').catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined;
    throw error;
  });
}
