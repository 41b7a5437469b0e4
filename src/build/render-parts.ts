import { fork } from 'node:child_process';
import { mkdir, readdir, rename } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join, resolve } from 'node:path';
import type { PartStore } from './part-store.ts';
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

/** Makes the pages of projects, over all cores, and keeps them in the store. Throws with what Astro says when a page breaks. */
export async function renderParts(wanted: readonly WantedPart[], store: PartStore): Promise<void> {
  const shares = dealOut(wanted, availableParallelism());
  const stop = new AbortController();
  const runs = shares.map((share, index) =>
    inScratch(`pages-${index}`, async (scratch) => {
      const ids = share.map(({ id }) => id);
      const { site, texts } = await renderInProcess(ids, scratch, stop.signal);
      const assets = await readdir(join(site, 'assets'));
      for (const { id, key } of share)
        await store.keep(id, key, await gather(site, id), { texts: ofProject(texts, id), assets });
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

/** Puts the files of one project into a folder of their own, as they lie in the site. The pages that tell of all projects stay behind. */
async function gather(folder: string, id: string): Promise<string> {
  const own = join(folder, `.${id}`);
  await mkdir(join(own, 'cards'), { recursive: true });
  for (const path of [id, `cards/${id}`, `cards/${id}.png`])
    await rename(join(folder, path), join(own, path));
  return own;
}

function ofProject(
  texts: Readonly<Record<string, string>>,
  id: string,
): Readonly<Record<string, string>> {
  return Object.fromEntries(Object.entries(texts).filter(([file]) => file.startsWith(`${id}/`)));
}
