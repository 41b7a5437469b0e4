import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { ProjectFiles } from './files.ts';
import type { Lists } from './lists.ts';

/** What the mark command keeps in a project's folder, byte for byte, and hashes of the files that rows name. */
export interface MarkFiles {
  /** `marks.txt`: the checkpoints. */
  readonly marks: string | undefined;
  /** `marked-rows.jsonl`: what each marked row was published as. */
  readonly rows: string | undefined;
  /** `marks-secret.txt`: what salts are made from. */
  readonly secret: string | undefined;
  /** Names of the files in `receipts/`. */
  readonly receipts: readonly string[];
  /** SHA-256 in hex of each file that a row names, by its path inside the project, such as `receipts/26-014.pdf`. */
  readonly hashes: ReadonlyMap<string, string>;
}

/** Reads what marks go by. Only files that a row names are hashed: a folder of photos is large. */
export async function readMarkFiles(
  contentDir: string,
  { id, photos, receipts }: ProjectFiles,
  lists: Lists,
): Promise<MarkFiles> {
  const folder = join(contentDir, id);
  const named = (names: readonly (string | undefined)[], present: readonly string[]) => {
    const known = new Set(present);
    return new Set(names.filter((name) => name !== undefined && known.has(name)));
  };
  const receiptsNamed = named(
    lists.costs.map(({ value }) => value.receipt),
    receipts,
  );
  const photosNamed = named(
    [...lists.readings, ...lists.findings].map(({ value }) => value.photo),
    photos,
  );
  const paths = [
    ...[...receiptsNamed].map((name) => `receipts/${name}`),
    ...[...photosNamed].map((name) => `photos/${name}`),
  ];
  const hashes = new Map<string, string>();
  for (const path of paths) hashes.set(path, await hashOf(join(folder, path)));
  const [marks, rows, secret] = await Promise.all(
    ['marks.txt', 'marked-rows.jsonl', 'marks-secret.txt'].map((name) => textOf(folder, name)),
  );
  return { marks, rows, secret, receipts, hashes };
}

/** Not through `decodeText`: a byte order mark or another form of Unicode is another file, and must show. */
async function textOf(folder: string, name: string): Promise<string | undefined> {
  try {
    return await readFile(join(folder, name), 'utf8');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}

async function hashOf(path: string): Promise<string> {
  return createHash('sha256')
    .update(await readFile(path))
    .digest('hex');
}
