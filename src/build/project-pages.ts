import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PhotoManifest } from '../photo/manifest.ts';
import { cacheDir, workDir } from '../site/folders.ts';
import { partKey, type State } from './part-key.ts';
import { type Part, PartStore } from './part-store.ts';
import { renderParts, type WantedPart } from './render-parts.ts';

/** The pages of some projects: those that are kept from earlier, and those that are still to be made. */
export interface ProjectPages {
  /** Projects whose pages are to be made. */
  readonly missing: readonly string[];
  /** Makes those and gives all. */
  make(): Promise<readonly Part[]>;
  /** Forgets pages that no build has asked for lately. */
  prune(): Promise<void>;
}

const store = new PartStore(cacheDir);

/** Looks for the pages of projects among those kept, by all that goes into them. */
export async function projectPages(ids: readonly string[], state: State): Promise<ProjectPages> {
  const photos = JSON.parse(await readFile(join(workDir, 'photos.json'), 'utf8')) as PhotoManifest;
  const parts = ids.map((id): WantedPart => {
    const about = state.projects.get(id) ?? { hash: 'it was not there', bytes: 0 };
    return { id, key: partKey(id, about, photos), bytes: about.bytes };
  });
  const find = () => Promise.all(parts.map(({ id, key }) => store.find(id, key)));
  const ready = await find();
  const wanted = parts.filter((_part, index) => ready[index] === undefined);
  return {
    missing: wanted.map(({ id }) => id),
    async make() {
      await renderParts(wanted, store);
      return (await find()).filter((part) => part !== undefined);
    },
    prune: () => store.prune(ids),
  };
}
