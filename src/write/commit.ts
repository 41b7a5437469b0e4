import { existsSync } from 'node:fs';
import { rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { bytesOf, type Change, type FileStep, hashOf, remember } from './journal.ts';
import { WRITE_FOLDER } from './lock.ts';
import { type Fresh, named, placeOf, swapIn, writeBeside, writeWhole } from './swap-in.ts';

/** A file to be put in its place, with what should stand there before and after. */
type Swap = Fresh & Pick<FileStep, 'before' | 'after'>;

interface Pending {
  readonly change: Change;
  readonly swaps: readonly Swap[];
}

/** A file's bytes as they will be; nothing where it goes. */
export type NewBytes = ReadonlyMap<string, Uint8Array | undefined>;

/**
 * Makes a change of one or more files. The new files are whole on the disk before the first takes its place, and what is to be done is
 * written down, so that a change that breaks off in between is finished by whoever comes next. Answers whether it was made: where a file
 * is not as the change was made of, all stays as it is.
 */
export async function commit(
  contentDir: string,
  change: Change,
  bytes: NewBytes,
): Promise<'made' | 'changed'> {
  try {
    await begin(contentDir, change, bytes);
  } catch (error) {
    await clearBegun(contentDir);
    throw error;
  }
  return finish(contentDir).catch((error: Error) => {
    throw Object.assign(error, { begun: true });
  });
}

async function begin(contentDir: string, change: Change, bytes: NewBytes): Promise<void> {
  const begun = begunOf(contentDir);
  const names = JSON.stringify(change.files.map(({ file }) => file));
  await rm(begun, { force: true });
  await writeFile(begun, names, { flag: 'wx' }).catch(named(begun));
  const swaps: Swap[] = [];
  for (const { file, before, after } of change.files) {
    const fresh = await writeBeside(join(contentDir, file), bytes.get(file) ?? new Uint8Array());
    swaps.push({ ...fresh, before, after });
  }
  const pending: Pending = { change, swaps };
  await writeWhole(pendingOf(contentDir), JSON.stringify(pending));
}

/**
 * Finishes a change that broke off, where there is one. A file that was changed by hand in between stays as it is, and where none was put
 * in its place before, all of them do.
 */
export async function finish(contentDir: string): Promise<'made' | 'changed'> {
  const text = await bytesOf(pendingOf(contentDir));
  const { change, swaps = [] }: Partial<Pending> =
    text === undefined ? {} : JSON.parse(new TextDecoder().decode(text));
  const states = await Promise.all(swaps.map(stateOf));
  const changed = states.includes('changed');
  if (!changed || states.includes('put in'))
    for (const [index, swap] of swaps.entries()) if (states[index] === 'open') await putIn(swap);
  if (change && !changed) await remember(contentDir, change);
  await rm(pendingOf(contentDir), { force: true });
  await clearBegun(contentDir);
  return changed ? 'changed' : 'made';
}

async function stateOf({
  path,
  target,
  before,
  after,
}: Swap): Promise<'open' | 'put in' | 'changed'> {
  const now = hashOf(await bytesOf(target));
  if (now === after) return 'put in';
  if (now === before) return 'open';
  // What was put in its place can have been changed since.
  return existsSync(path) ? 'changed' : 'put in';
}

async function putIn(swap: Swap): Promise<void> {
  if (swap.after === '') await rm(swap.target);
  else await swapIn(swap);
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

function pendingOf(contentDir: string): string {
  return join(contentDir, WRITE_FOLDER, 'pending.json');
}
