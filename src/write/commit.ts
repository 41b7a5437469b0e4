import { existsSync } from 'node:fs';
import { realpath, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { bytesOf, type Change, type FileStep, hashOf, remember } from './journal.ts';
import { liesIn } from './lies-in.ts';
import { WRITE_FOLDER } from './lock.ts';
import { type Fresh, named, placeOf, swapIn, writeBeside, writeWhole } from './swap-in.ts';

/** A file to be put in its place, with what should stand there before and after. */
type Swap = Fresh & Pick<FileStep, 'before' | 'after'>;

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
  for (const { file } of change.files) {
    if ((await freshOf(contentDir, file)) === undefined)
      throw new Error(`${file} does not lie in the content folder`);
    await writeBeside(join(contentDir, file), bytes.get(file) ?? new Uint8Array());
  }
  await writeWhole(pendingOf(contentDir), JSON.stringify(change));
}

/** Where a file of a change is made and put; undefined where that is not in the content folder, as what came with somebody's content may say. */
async function freshOf(contentDir: string, file: string): Promise<Fresh | undefined> {
  const fresh = await placeOf(join(contentDir, file));
  const [home, folder] = [await realpath(contentDir), await realFolder(dirname(fresh.target))];
  return liesIn(home, folder) ? fresh : undefined;
}

/** A folder's path without links, also where it is not there yet. */
async function realFolder(folder: string): Promise<string> {
  return realpath(folder).catch(async () =>
    join(await realFolder(dirname(folder)), basename(folder)),
  );
}

async function swapsOf(contentDir: string, { files }: Change): Promise<Swap[]> {
  const swaps = files.map(async ({ file, before, after }) => {
    const fresh = await freshOf(contentDir, file);
    return fresh ? [{ ...fresh, before, after }] : [];
  });
  return (await Promise.all(swaps)).flat();
}

/**
 * Finishes a change that broke off, where there is one. A file that was changed by hand in between stays as it is, and where none was put
 * in its place before, all of them do.
 */
export async function finish(contentDir: string): Promise<'made' | 'changed'> {
  const text = await bytesOf(pendingOf(contentDir));
  const change: Change | undefined =
    text === undefined ? undefined : JSON.parse(new TextDecoder().decode(text));
  const swaps = change ? await swapsOf(contentDir, change) : [];
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
  for (const file of files) {
    const fresh = await freshOf(contentDir, file);
    if (fresh) await rm(fresh.path, { force: true });
  }
  await rm(begunOf(contentDir), { force: true });
}

function begunOf(contentDir: string): string {
  return join(contentDir, WRITE_FOLDER, 'begun.json');
}

function pendingOf(contentDir: string): string {
  return join(contentDir, WRITE_FOLDER, 'pending.json');
}
