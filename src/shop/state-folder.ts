import { createHash, randomBytes } from 'node:crypto';
import { mkdir, readFile } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { writeWhole } from '../write/swap-in.ts';

/** Where the bench page of a content folder keeps phones, codes, its journal and pictures on the way: one folder for each content folder. */
export function stateFolder(workDir: string, contentDir: string): string {
  const name = createHash('sha256').update(resolve(contentDir)).digest('hex').slice(0, 16);
  return join(workDir, 'bench-page', name);
}

/** Writes a file that only its owner may read, whole or not at all, and on the disk when it returns. */
export async function saveWhole(path: string, bytes: string | Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true, mode: 0o700 });
  await writeWhole(path, bytes, { mode: 0o600, writer: randomBytes(6).toString('hex') });
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
