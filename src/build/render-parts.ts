import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import type { EntryTexts } from './entry-texts.ts';
import { WORTH_A_PROCESS } from './find-parts.ts';
import type { FinishOrder } from './finish-worker.ts';
import { askProcess } from './own-process.ts';
import type { PageProgram } from './page-program.ts';
import { type Outside, ofProjects } from './read-finished.ts';
import type { WantedPart } from './ready.ts';
import type { RenderOrder } from './render-worker.ts';
import { inScratch } from './scratch.ts';

/** Where finished pages are kept; it refuses them by throwing. */
export type KeepPages = (
  site: string,
  share: readonly WantedPart[],
  texts: EntryTexts,
) => Promise<void>;

/** Left to itself, V8 lets garbage grow to several times what is in use before it looks: a fifth more work takes half the memory. */
const FRUGAL = ['--heap-growing-percent=40', '--max-semi-space-size=16'];

/**
 * Makes the pages of projects, and what is read off them, in processes of their own, one for each large project, as many at once as there
 * are cores. Throws with what a page says that breaks.
 */
export async function renderParts(
  program: PageProgram,
  wanted: readonly WantedPart[],
  { outside, keep }: { outside: Outside; keep: KeepPages },
): Promise<void> {
  const lots = inLots(wanted, WORTH_A_PROCESS).entries();
  const stop = new AbortController();
  const ask = <Answer>(file: string, order: RenderOrder | FinishOrder) =>
    askProcess<Answer>(file, order, { signal: stop.signal, flags: FRUGAL });
  const render = (lot: readonly WantedPart[], index: number) =>
    inScratch(`pages-${index}`, async (scratch) => {
      const projects = lot.map(({ id }) => id);
      const site = join(scratch, 'site');
      await ask('build/render-worker.ts', { program, projects, site });
      const order = { folder: site, projects, ...ofProjects(projects, outside) };
      await keep(site, lot, await ask<EntryTexts>('build/finish-worker.ts', order));
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
