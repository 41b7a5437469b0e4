import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { glanceAt } from '../photo/glance.ts';
import { problemOf } from '../photo/look.ts';
import type { Day } from '../time/day.ts';

/** What becomes of one file of a folder of pictures. Each file has exactly one. */
export type PhotoOutcome = { readonly name: string } & (
  | {
      readonly is: 'added';
      readonly taken: Day | undefined;
      /** Whether it says where it was taken. */
      readonly gps: boolean;
    }
  | { readonly is: 'known'; readonly as: string }
  | { readonly is: 'refused'; readonly why: string }
);

/** Looks through a folder, not into folders inside it; a picture is known by the SHA-256 of its bytes, whatever its name. */
export async function photoOutcomes(folder: string, photosDir: string): Promise<PhotoOutcome[]> {
  const known = new Map<string, string>();
  for (const name of await namesIn(photosDir).catch(() => []))
    known.set(hashOf(await readFile(join(photosDir, name))), name);

  const outcomes: PhotoOutcome[] = [];
  for (const entry of await sortedEntries(folder)) {
    const { name } = entry;
    if (!entry.isFile()) {
      const why = entry.isDirectory()
        ? 'it is a folder; import it by itself'
        : 'it is a link or no plain file';
      outcomes.push({ name, is: 'refused', why });
      continue;
    }
    const bytes = await readFile(join(folder, name));
    const hash = hashOf(bytes);
    const as = known.get(hash);
    if (as !== undefined) outcomes.push({ name, is: 'known', as });
    else outcomes.push(await outcomeOf(name, join(folder, name), bytes));
    if (outcomes.at(-1)?.is === 'added') known.set(hash, name);
  }
  return outcomes;
}

async function outcomeOf(name: string, path: string, bytes: Uint8Array): Promise<PhotoOutcome> {
  try {
    const { taken, gps } = await glanceAt(bytes);
    return { name, is: 'added', taken, gps };
  } catch (error) {
    const { message } = await problemOf(name, path, error);
    return { name, is: 'refused', why: message };
  }
}

async function sortedEntries(folder: string) {
  const entries = await readdir(folder, { withFileTypes: true });
  return entries.sort((a, b) => (a.name < b.name ? -1 : 1));
}

async function namesIn(folder: string): Promise<string[]> {
  return (await sortedEntries(folder)).filter((one) => one.isFile()).map(({ name }) => name);
}

function hashOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex');
}
