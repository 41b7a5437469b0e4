import { createHash } from 'node:crypto';
import { appendFile, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { ListKind } from '../model/kinds.ts';
import type { Insertion } from './insertion.ts';
import { WRITE_FOLDER } from './lock.ts';
import { type Fresh, named, placeOf, swapIn, writeBeside, writeWhole } from './swap-in.ts';

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

interface Pending {
  readonly change: Change;
  readonly swaps: readonly (Fresh & { readonly before: string; readonly after: string })[];
}

/** A file's bytes as they will be; nothing where it goes. */
export type NewBytes = ReadonlyMap<string, Uint8Array | undefined>;

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

/**
 * Makes a change of one or more files. The new files are whole on the disk before the first takes its place, and what is to be done is
 * written down, so that a change that breaks off in between is finished by whoever comes next.
 */
export async function commit(contentDir: string, change: Change, bytes: NewBytes): Promise<void> {
  try {
    await begin(contentDir, change, bytes);
  } catch (error) {
    await clearBegun(contentDir);
    throw error;
  }
  await finish(contentDir).catch((error: Error) => {
    throw Object.assign(error, { begun: true });
  });
}

async function begin(contentDir: string, change: Change, bytes: NewBytes): Promise<void> {
  const begun = begunOf(contentDir);
  const names = JSON.stringify(change.files.map(({ file }) => file));
  await writeFile(begun, names).catch(named(begun));
  const swaps: Pending['swaps'][number][] = [];
  for (const { file, before, after } of change.files) {
    const fresh = await writeBeside(join(contentDir, file), bytes.get(file) ?? new Uint8Array());
    swaps.push({ ...fresh, before, after });
  }
  const pending: Pending = { change, swaps };
  await writeWhole(pendingOf(contentDir), JSON.stringify(pending));
}

/** Finishes a change that broke off, where there is one. A file that was changed by hand in between stays as it is. */
export async function finish(contentDir: string): Promise<void> {
  const text = await bytesOf(pendingOf(contentDir));
  if (text === undefined) return clearBegun(contentDir);
  const { change, swaps } = JSON.parse(new TextDecoder().decode(text)) as Pending;
  let whole = true;
  for (const swap of swaps) {
    const now = hashOf(await bytesOf(swap.target));
    if (now === swap.after) await rm(swap.path, { force: true });
    else if (now !== swap.before) whole = false;
    else if (swap.after === '') await rm(swap.target);
    else await swapIn(swap);
    await rm(swap.path, { force: true });
  }
  const known = await changesOf(contentDir);
  if (whole && !known.some(({ id }) => id === change.id)) {
    const journal = journalOf(contentDir);
    const held = await bytesOf(journal);
    const close = held !== undefined && held.length > 0 && held.at(-1) !== 0x0a ? '\n' : '';
    const line = `${close}${JSON.stringify(change)}\n`;
    await appendFile(journal, line, { flush: true }).catch(named(journal));
  }
  await rm(pendingOf(contentDir));
  await clearBegun(contentDir);
}

/** Removes what a change that broke off before it could be finished has left beside its files. */
async function clearBegun(contentDir: string): Promise<void> {
  const text = new TextDecoder().decode(await bytesOf(begunOf(contentDir)));
  // Where the list itself broke off, nothing had been written yet.
  const files: readonly string[] = text.endsWith(']') ? JSON.parse(text) : [];
  for (const file of files) await rm((await placeOf(join(contentDir, file))).path, { force: true });
  await rm(begunOf(contentDir), { force: true });
}

function begunOf(contentDir: string): string {
  return join(contentDir, WRITE_FOLDER, 'begun.json');
}

function journalOf(contentDir: string): string {
  return join(contentDir, WRITE_FOLDER, 'additions.jsonl');
}

function pendingOf(contentDir: string): string {
  return join(contentDir, WRITE_FOLDER, 'pending.json');
}
