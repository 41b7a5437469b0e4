import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { writeWhole } from '../write/swap-in.ts';

/** What was imported into a project, line by line: `imported.txt` of its folder. */
export const IMPORTED = 'imported.txt';

/** Key of a line → the row it became. A row that is still `pending` was about to be written when the list was. */
export type Imported = ReadonlyMap<string, { readonly id: string; readonly pending: boolean }>;

const HEAD =
  '# Lines that were imported, and the rows they became. Kept by "npm run import"; remove a line to import it again.\n';

/** Reads a list; lines that say nothing are passed over. */
export function parseImported(text: string): Imported {
  return new Map(
    text.split(/\r?\n/).flatMap((line) => {
      const [, pending, key, id] = /^(\? )?([^\s#]\S*) (\S+)$/.exec(line.trimEnd()) ?? [];
      return key && id ? [[key, { id, pending: pending !== undefined }] as const] : [];
    }),
  );
}

/** The list as text, in the order in which lines were imported. */
export function printImported(imported: Imported): string {
  const lines = [...imported].map(
    ([key, { id, pending }]) => `${pending ? '? ' : ''}${key} ${id}\n`,
  );
  return HEAD + lines.join('');
}

/** What a project's list holds; empty where there is none yet. */
export async function readImported(projectDir: string): Promise<Imported> {
  try {
    return parseImported(await readFile(join(projectDir, IMPORTED), 'utf8'));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return new Map();
    throw error;
  }
}

/** Writes the list; it is there whole or as it was. */
export async function writeImported(projectDir: string, imported: Imported): Promise<void> {
  await writeWhole(join(projectDir, IMPORTED), printImported(imported));
}

/** Rows that were pending and are there were written after all; the others were not, and their lines are new again. */
export function settle(imported: Imported, rowIds: ReadonlySet<string>): Imported {
  return new Map(
    [...imported]
      .filter(([, { id, pending }]) => !pending || rowIds.has(id))
      .map(([key, { id }]) => [key, { id, pending: false }]),
  );
}
