import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PhotoManifest } from '../photo/manifest.ts';
import { workDir } from '../site/folders.ts';
import { partStore } from './keep-pages.ts';
import { partKey, type State } from './part-key.ts';
import type { WantedPart } from './ready.ts';

/** Bytes of content whose pages are worth a process of their own: starting one takes about as long as making them. */
export const WORTH_A_PROCESS = 1_000_000;

/** Projects whose pages are asked for, and which of them are kept from earlier. */
export interface FoundParts {
  readonly asked: readonly WantedPart[];
  readonly missing: readonly WantedPart[];
  /** The missing ones, where all of them are quick to make. */
  readonly quick: readonly WantedPart[];
}

/** Looks for the pages of projects among those kept, by all that goes into them. */
export async function findParts(ids: readonly string[], state: State): Promise<FoundParts> {
  const asked = await wantedParts(ids, state);
  const kept = await Promise.all(asked.map(({ id, key }) => partStore.find(id, key)));
  const missing = asked.filter((_part, index) => kept[index] === undefined);
  const bytes = missing.reduce((sum, part) => sum + part.bytes, 0);
  return { asked, missing, quick: bytes <= WORTH_A_PROCESS ? missing : [] };
}

/** Names the pages of projects by all that goes into them, once photos are made. */
export async function wantedParts(ids: readonly string[], state: State): Promise<WantedPart[]> {
  const photos = JSON.parse(await readFile(join(workDir, 'photos.json'), 'utf8')) as PhotoManifest;
  return ids.map((id) => {
    const about = state.projects.get(id) ?? { hash: 'it was not there', bytes: 0 };
    return { id, key: partKey(id, about, photos), bytes: about.bytes };
  });
}
