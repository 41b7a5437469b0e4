import { fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { join, resolve } from 'node:path';
import type { EntryTexts } from './entry-texts.ts';
import type { PageProgram } from './page-program.ts';
import type { Rendered, RenderOrder } from './render-worker.ts';
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

/** Makes the pages of projects in processes of their own, over all cores. Throws with what a page says that breaks. */
export async function renderParts(
  program: PageProgram,
  wanted: readonly WantedPart[],
  keep: KeepPages,
): Promise<void> {
  const shares = dealOut(wanted, availableParallelism());
  const stop = new AbortController();
  const runs = shares.map((share, index) =>
    inScratch(`pages-${index}`, async (scratch) => {
      const ids = share.map(({ id }) => id);
      const site = join(scratch, 'site');
      await keep(site, share, await renderInProcess({ program, projects: ids, site }, stop.signal));
    }),
  );
  try {
    await Promise.all(runs);
  } catch (error) {
    stop.abort();
    await Promise.allSettled(runs);
    throw error;
  }
}

/** Deals projects out to at most `count` shares of like size: the largest first, each to the share that has least. */
export function dealOut<Item extends { readonly bytes: number }>(
  items: readonly Item[],
  count: number,
): readonly (readonly Item[])[] {
  const shares = Array.from({ length: Math.min(count, items.length) }, () => ({
    items: [] as Item[],
    bytes: 0,
  }));
  for (const item of [...items].sort((a, b) => b.bytes - a.bytes)) {
    const least = shares.reduce((one, other) => (other.bytes < one.bytes ? other : one));
    least.items.push(item);
    least.bytes += item.bytes;
  }
  return shares.map((share) => share.items);
}

function renderInProcess(order: RenderOrder, signal: AbortSignal): Promise<EntryTexts> {
  return new Promise((done, reject) => {
    const child = fork(resolve('src/build/render-worker.ts'), { signal, killSignal: 'SIGKILL' });
    child.send(order);
    let told: Rendered | undefined;
    child.on('message', (message) => {
      told = message as Rendered;
    });
    child.once('error', reject);
    child.once('close', (code, killed) => {
      if (told && 'texts' in told) done(told.texts);
      else reject(new Error(told?.failure ?? `making pages ended early (${killed ?? code})`));
    });
  });
}
