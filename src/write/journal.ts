import { createHash } from 'node:crypto';
import { appendFile, constants, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { ListKind } from '../model/kinds.ts';
import type { Insertion } from './insertion.ts';
import { WRITE_FOLDER } from './lock.ts';
import { named } from './swap-in.ts';

/** A row that was added, and where it stands. */
export interface Written {
  readonly file: string;
  readonly line: number;
  readonly text: string;
  readonly kind: ListKind;
  readonly id: string;
}

/** What an addition did to a file. */
export interface FileStep {
  readonly file: string;
  /** Hashes of the bytes before and after; none where there was no file. */
  readonly before: string;
  readonly after: string;
  readonly insertions: readonly Insertion[];
}

/** A change of a content folder, as kept to be undone. */
export interface Change {
  readonly id: string;
  readonly at: string;
  readonly project: string;
  readonly by?: string | undefined;
  /** Name that whoever asked gave it, so that asking twice writes once. */
  readonly key?: string | undefined;
  /** The change that this one takes back. */
  readonly undoes?: string | undefined;
  readonly written: readonly Written[];
  readonly files: readonly FileStep[];
}

/** Hash of a file's bytes; an empty text for no file. */
export function hashOf(bytes: Uint8Array | undefined): string {
  return bytes === undefined ? '' : createHash('sha256').update(bytes).digest('hex');
}

/** A file's bytes, or nothing where there is none. */
export async function bytesOf(path: string): Promise<Uint8Array | undefined> {
  try {
    return await readFile(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}

/** All changes, the oldest first. A line that broke off is left out. */
export async function changesOf(contentDir: string): Promise<Change[]> {
  const text = new TextDecoder().decode(await bytesOf(journalOf(contentDir)));
  return text.split('\n').flatMap((line) => {
    try {
      return [JSON.parse(line) as Change];
    } catch {
      return [];
    }
  });
}

/** Additions that nobody took back, the oldest first; of one project, or of all. */
export async function standingChanges(contentDir: string, project?: string): Promise<Change[]> {
  const changes = await changesOf(contentDir);
  const undone = new Set(changes.map(({ undoes }) => undoes));
  return changes.filter(
    (change) =>
      change.undoes === undefined &&
      !undone.has(change.id) &&
      (project === undefined || change.project === project),
  );
}

/** Writes a change at the end of the journal, once. */
export async function remember(contentDir: string, change: Change): Promise<void> {
  const known = await changesOf(contentDir);
  if (known.some(({ id }) => id === change.id)) return;
  const journal = journalOf(contentDir);
  const held = await bytesOf(journal);
  const close = held !== undefined && held.length > 0 && held.at(-1) !== 0x0a ? '\n' : '';
  const line = `${close}${JSON.stringify(change)}\n`;
  await appendFile(journal, line, { flag: APPEND, flush: true }).catch(named(journal));
}

/** At the end of a file, and never of one that a link leads to. */
const APPEND =
  constants.O_APPEND | constants.O_CREAT | constants.O_WRONLY | (constants.O_NOFOLLOW ?? 0);

function journalOf(contentDir: string): string {
  return join(contentDir, WRITE_FOLDER, 'additions.jsonl');
}
