import { fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import type { EntryTexts } from './entry-texts.ts';
import type { Made, Rendered } from './render-worker.ts';
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

/** Makes the pages of projects in processes of their own, over all cores. Throws with what Astro says when a page breaks. */
export async function renderParts(wanted: readonly WantedPart[], keep: KeepPages): Promise<void> {
  const shares = dealOut(wanted, availableParallelism());
  const stop = new AbortController();
  const runs = shares.map((share, index) =>
    inScratch(`pages-${index}`, async (scratch) => {
      const ids = share.map(({ id }) => id);
      const { site, texts } = await renderInProcess(ids, scratch, stop.signal);
      await keep(site, share, texts);
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

function renderInProcess(
  projects: readonly string[],
  scratch: string,
  signal: AbortSignal,
): Promise<Made> {
  return new Promise((done, reject) => {
    const child = fork(resolve('src/build/render-worker.ts'), [scratch, ...projects], {
      signal,
      killSignal: 'SIGKILL',
    });
    let told: Rendered | undefined;
    child.on('message', (message) => {
      told = message as Rendered;
    });
    child.once('error', reject);
    child.once('close', (code, killed) => {
      if (told && 'texts' in told) done(told);
      else reject(new Error(told?.failure ?? `making pages ended early (${killed ?? code})`));
    });
  });
}
