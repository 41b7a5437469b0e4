import { existsSync } from 'node:fs';
import { mkdir, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { cacheDir } from '../site/folders.ts';
import type { EntryTexts } from './entry-texts.ts';
import { type Kept, KeptFolders } from './kept-folders.ts';
import type { WantedPart } from './ready.ts';

/** What is noted beside the pages of a project: the text of each entry as feeds have it. */
export interface PartNotes {
  readonly texts: EntryTexts;
}

/** The finished pages of one project. */
export type Part = Kept<PartNotes>;

/** Finished pages of projects. */
export const partStore = new KeptFolders<PartNotes>(join(cacheDir, 'parts'));

/** Moves the pages of projects out of a folder that they were made in into the store. What belongs to no project stays behind. */
export async function keepPages(
  site: string,
  share: readonly WantedPart[],
  texts: EntryTexts,
): Promise<void> {
  for (const { id, key } of share) {
    const own = Object.entries(texts).filter(([file]) => file.startsWith(`${id}/`));
    await partStore.keep(id, key, await gather(site, id), { texts: Object.fromEntries(own) });
  }
}

/** Puts the files of one project into a folder of their own, as they lie in the site. */
async function gather(site: string, id: string): Promise<string> {
  const own = join(site, `.${id}`);
  await mkdir(join(own, 'cards'), { recursive: true });
  const cards = `cards/${id}`;
  // A project that has begun with nothing but its name has one card.
  const more = existsSync(join(site, cards)) ? [cards] : [];
  for (const path of [id, `${cards}.png`, ...more]) await rename(join(site, path), join(own, path));
  return own;
}
