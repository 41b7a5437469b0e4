import { changedSince, contentState } from '../read/content-state.ts';
import { contentDir } from '../site/folders.ts';
import { keepPages, type Part, partStore } from './keep-pages.ts';
import { NotBuilt } from './not-built.ts';
import { comingProgram } from './page-program.ts';
import { programKey } from './part-key.ts';
import { readFinished } from './read-finished.ts';
import type { Ready } from './ready.ts';
import { type KeepPages, renderParts } from './render-parts.ts';

/** Makes the pages of projects that are missing, those apart that were made in `shared` on the way. Throws with what a page says that breaks. */
export async function makeProjectPages(ready: Ready, shared: string): Promise<void> {
  const { missing, beside } = ready;
  const keep: KeepPages = async (site, share, texts) => {
    // Pages of content that was not checked must not go under the name of what was.
    await stillSame(ready);
    await keepPages(site, share, texts);
  };
  if (beside.length > 0) {
    const ids = beside.map(({ id }) => id);
    return keep(shared, beside, await readFinished(shared, ids, ready));
  }
  if (missing.length === 0) return;
  const program = comingProgram(await programKey(contentDir));
  await program.use((program) => renderParts(program, missing, { outside: ready, keep }));
}

/** The finished pages of all projects. */
export async function projectPages({ asked }: Ready): Promise<readonly Part[]> {
  const found = await Promise.all(asked.map(({ id, key }) => partStore.find(id, key)));
  return found.filter((part) => part !== undefined);
}

/** Throws where a file is not as it was when it was read. */
export async function stillSame({ before }: Ready): Promise<void> {
  const changed = changedSince(new Map(before), await contentState(contentDir));
  if (changed.length > 0)
    throw new NotBuilt(`Changed while it was read: ${changed.join(', ')}\nRun the command again.`);
}
