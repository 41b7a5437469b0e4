import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PhotoManifest } from '../photo/manifest.ts';
import { cacheDir, workDir } from '../site/folders.ts';
import { keepPages, type Part, type PartNotes } from './keep-pages.ts';
import { KeptFolders } from './kept-folders.ts';
import type { PageProgram } from './page-program.ts';
import { partKey } from './part-key.ts';
import type { ReadyContent } from './ready.ts';
import { type KeepPages, renderParts, type WantedPart, WORTH_A_PROCESS } from './render-parts.ts';
import { writeSearch } from './write-search.ts';

/** The pages of some projects: those that are kept from earlier, and those that are still to be made. */
export interface ProjectPages {
  /** Projects whose pages are to be made. */
  readonly missing: readonly string[];
  /** Those of them that are quick to make. */
  readonly small: readonly WantedPart[];
  readonly keep: KeepPages;
  /** Makes the pages of all that are missing, or of those that are not quick to make. */
  make(program: PageProgram, which: 'all' | 'large'): Promise<void>;
  /** All pages, once they are made. */
  parts(): Promise<readonly Part[]>;
  /** Forgets pages that no build has asked for lately. */
  prune(): Promise<void>;
}

const store = new KeptFolders<PartNotes>(join(cacheDir, 'parts'));

/** Looks for the pages of projects among those kept, by all that goes into them. */
export async function projectPages(
  ids: readonly string[],
  { book, state, stillSame }: ReadyContent,
): Promise<ProjectPages> {
  const photos = JSON.parse(await readFile(join(workDir, 'photos.json'), 'utf8')) as PhotoManifest;
  const all = ids.map((id): WantedPart => {
    const about = state.projects.get(id) ?? { hash: 'it was not there', bytes: 0 };
    return { id, key: partKey(id, about, photos), bytes: about.bytes };
  });
  const find = () => Promise.all(all.map(({ id, key }) => store.find(id, key)));
  const ready = await find();
  const wanted = all.filter((_part, index) => ready[index] === undefined);
  const small = wanted.reduce((sum, { bytes }) => sum + bytes, 0) <= WORTH_A_PROCESS;
  const keep: KeepPages = async (site, share, texts) => {
    // Pages of content that was not checked must not go under the name of what was.
    await stillSame();
    for (const { id } of share) await writeSearch(site, book, id);
    await keepPages(site, share, { texts, store });
  };
  return {
    missing: wanted.map(({ id }) => id),
    small: small ? wanted : [],
    keep,
    make: (program, which) => renderParts(program, which === 'large' && small ? [] : wanted, keep),
    parts: async () => (await find()).filter((part) => part !== undefined),
    prune: () => store.prune(ids),
  };
}
