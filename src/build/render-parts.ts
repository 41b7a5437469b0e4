import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import type { EntryTexts } from './entry-texts.ts';
import { askProcess } from './own-process.ts';
import type { PageProgram } from './page-program.ts';
import type { RenderOrder } from './render-worker.ts';
import { inScratch } from './scratch.ts';

/** A project whose pages are to be made. */
export interface WantedPart {
  readonly id: string;
  /** The name that its pages are kept under. */
  readonly key: string;
  /** How large its content is; pages are made in proportion. */
  readonly bytes: number;
}

/** Where finished pages are kept; it refuses them by throwing. */
export type KeepPages = (
  site: string,
  share: readonly WantedPart[],
  texts: EntryTexts,
) => Promise<void>;

/** Bytes of content whose pages are worth a process of their own: starting one takes about as long as making them. */
export const WORTH_A_PROCESS = 1_000_000;

/**
 * Makes the pages of projects in processes of their own, one for each large project, as many at once as there are cores. Throws with what
 * a page says that breaks.
 */
export async function renderParts(
  program: PageProgram,
  wanted: readonly WantedPart[],
  keep: KeepPages,
): Promise<void> {
  const lots = inLots(wanted, WORTH_A_PROCESS).entries();
  const stop = new AbortController();
  const render = (lot: readonly WantedPart[], index: number) =>
    inScratch(`pages-${index}`, async (scratch) => {
      const projects = lot.map(({ id }) => id);
      const site = join(scratch, 'site');
      const order: RenderOrder = { program, projects, site };
      await keep(site, lot, await askProcess<EntryTexts>('render-worker.ts', order, stop.signal));
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
