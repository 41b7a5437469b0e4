import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import { cacheDir } from '../site/folders.ts';
import { type Kept, KeptFolders } from './kept-folders.ts';
import { askProcess } from './own-process.ts';
import { inScratch } from './scratch.ts';

/** Folder of the program beside the `assets/` that its pages ask for. */
export const PROGRAM = 'program';

/** Where the program is to be made: in `site/` of a scratch folder. It is answered with what is noted of it. */
export interface BundleOrder {
  readonly scratch: string;
}

/** What of the program is noted beside it. */
export interface PageNotes {
  /** File that it is started by. */
  readonly entry: string;
  /** Style sheets of each page, as Astro hands them to it. */
  readonly styles: readonly (readonly [page: string, about: { readonly styles: unknown[] }])[];
}

/** The program that makes pages, bundled once for all content. */
export type PageProgram = Kept<PageNotes>;

const store = new KeptFolders<PageNotes>(join(cacheDir, 'programs'));

/** The program on its way. */
export interface ComingProgram {
  /** Calls a function with the program once it is there. Throws with what Astro says when it can't be made. */
  use<Result>(use: (program: PageProgram) => Promise<Result>): Promise<Result>;
  /** Ends its making, where it is not needed. */
  stop(): Promise<void>;
}

/** Begins to make the program that makes pages, or takes the one that is kept under this name; other work goes on meanwhile. */
export function comingProgram(key: string): ComingProgram {
  const stop = new AbortController();
  const coming = find(key, stop.signal);
  const ended = coming.catch(() => {}); // Whoever uses it is told.
  return {
    use: async (use) => {
      const kept = await coming;
      // It runs from below the packages that it asks for, where nobody else removes it.
      return inScratch('program', async (scratch) => {
        await cp(join(kept.folder, 'site'), join(scratch, 'site'), { recursive: true });
        return use({ ...kept, folder: scratch });
      });
    },
    stop: async () => {
      stop.abort();
      await ended;
    },
  };
}

async function find(key: string, signal: AbortSignal): Promise<PageProgram> {
  const kept = (await store.find('pages', key)) ?? (await bundle(key, signal));
  await store.prune(['pages']);
  return kept;
}

function bundle(key: string, signal: AbortSignal): Promise<PageProgram> {
  return inScratch('bundle', async (scratch) => {
    const order: BundleOrder = { scratch };
    const notes = await askProcess<PageNotes>('build/bundle-worker.ts', order, { signal });
    return store.keep('pages', key, join(scratch, 'site'), notes);
  });
}
