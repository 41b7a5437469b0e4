import { mkdir, readdir, rename } from 'node:fs/promises';
import { join } from 'node:path';
import type { EntryTexts } from './entry-texts.ts';
import type { PartStore } from './part-store.ts';
import type { WantedPart } from './render-parts.ts';

/** Moves the pages of projects out of a folder that Astro made into the store. What belongs to no project stays behind. */
export async function keepPages(
  site: string,
  share: readonly WantedPart[],
  { texts, store }: { readonly texts: EntryTexts; readonly store: PartStore },
): Promise<void> {
  const assets = await readdir(join(site, 'assets'));
  for (const { id, key } of share) {
    const own = Object.entries(texts).filter(([file]) => file.startsWith(`${id}/`));
    await store.keep(id, key, await gather(site, id), { texts: Object.fromEntries(own), assets });
  }
}

/** Puts the files of one project into a folder of their own, as they lie in the site. */
async function gather(site: string, id: string): Promise<string> {
  const own = join(site, `.${id}`);
  await mkdir(join(own, 'cards'), { recursive: true });
  for (const path of [id, `cards/${id}`, `cards/${id}.png`])
    await rename(join(site, path), join(own, path));
  return own;
}
