import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import type { EntryTexts } from './entry-texts.ts';
import { WORTH_A_PROCESS } from './find-parts.ts';
import { askProcess } from './own-process.ts';
import type { PageProgram } from './page-program.ts';
import type { WantedPart } from './ready.ts';
import type { RenderOrder } from './render-worker.ts';
import { inScratch } from './scratch.ts';
import type { SearchOrder } from './search-worker.ts';
import type { Searched } from './write-search.ts';

/** Where finished pages are kept; it refuses them by throwing. */
export type KeepPages = (
  site: string,
  share: readonly WantedPart[],
  texts: EntryTexts,
) => Promise<void>;

/** Left to itself, V8 lets garbage grow to several times what is in use before it looks: a fifth more work takes half the memory. */
const FRUGAL = ['--heap-growing-percent=40', '--max-semi-space-size=16'];

/**
 * Makes the pages of projects, and the indexes of them, in processes of their own, one for each large project, as many at once as there are cores. Throws with what
 * a page says that breaks.
 */
export async function renderParts(
  program: PageProgram,
  wanted: readonly WantedPart[],
  { searched, keep }: { searched: Searched; keep: KeepPages },
): Promise<void> {
  const lots = inLots(wanted, WORTH_A_PROCESS).entries();
  const stop = new AbortController();
  const render = (lot: readonly WantedPart[], index: number) =>
    inScratch(`pages-${index}`, async (scratch) => {
      const projects = lot.map(({ id }) => id);
      const site = join(scratch, 'site');
      const ask = <Answer>(file: string, order: RenderOrder | SearchOrder) =>
        askProcess<Answer>(file, order, { signal: stop.signal, flags: FRUGAL });
      const texts = await ask<EntryTexts>('build/render-worker.ts', { program, projects, site });
      await ask('build/search-worker.ts', { folder: site, projects, ...searchedOf(lot, searched) });
      await keep(site, lot, texts);
    });
  // Each takes the next lot from the same list.
  const lanes = Array.from({ length: availableParallelism() }, async () => {
    for (const [index, lot] of lots) await render(lot, index);
  });
  try {
    await Promise.all(lanes);
  } catch (error) {
    stop.abort();
    await Promise.allSettled(lanes);
    throw error;
  }
}

/** What is searched of some projects alone. */
function searchedOf(lot: readonly WantedPart[], { site, searched }: Searched): Searched {
  const ids = new Set(lot.map(({ id }) => id));
  return { site, searched: searched.filter(({ project }) => ids.has(project)) };
}

/** Puts items together, the largest first, until each lot is at least so large; the last has what is left. */
export function inLots<Item extends { readonly bytes: number }>(
  items: readonly Item[],
  least: number,
): readonly (readonly Item[])[] {
  const lots: Item[][] = [];
  let bytes = least;
  for (const item of [...items].sort((a, b) => b.bytes - a.bytes)) {
    if (bytes >= least) {
      lots.push([]);
      bytes = 0;
    }
    lots.at(-1)?.push(item);
    bytes += item.bytes;
  }
  return lots;
}
