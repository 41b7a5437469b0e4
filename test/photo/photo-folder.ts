import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { openBook } from '../../src/book/open.ts';
import { type DeriveOptions, derivePhotos } from '../../src/photo/derive.ts';
import type { PhotoManifest } from '../../src/photo/manifest.ts';
import type { Problem } from '../../src/read/problem.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';
import type { Files } from '../check/sound-files.ts';

/** A content folder whose one entry shows some photos, and a work folder beside it. */
export interface PhotoFolder {
  readonly content: string;
  /** Where the derived pictures are. */
  readonly derived: string;
  /** Where they are kept. */
  readonly cached: string;
  /** Derives the photos that the entries show as they are now. */
  derive(options?: DeriveOptions): Promise<Problem[]>;
  manifest(): Promise<PhotoManifest>;
  /** Writes files anew, named as for the folder itself. */
  write(files: Files): Promise<void>;
  /** Names of all derived pictures, kept ones included. */
  all(): Promise<string[]>;
}

const RECORDS = 'photos.yaml';
const placeOf = (name: string) => (name === RECORDS ? `press/${name}` : `press/photos/${name}`);

/** Writes photos by name into a small project whose entry shows the ones named in `shown`, or all, or holds `shown` itself; `photos.yaml` holds records of them. */
export async function inPhotoFolder<Result>(
  photos: Files,
  use: (folder: PhotoFolder) => Promise<Result>,
  shown: readonly string[] | string = Object.keys(photos).filter((name) => name !== RECORDS),
): Promise<Result> {
  const files = Object.entries(photos).map(([name, bytes]) => [placeOf(name), bytes]);
  const entry = 'press/entries/2025-04-13-the-ram-slides.mdx';
  return inContentFolder(
    {
      ...Object.fromEntries(files),
      [entry]: ['<Tally />', typeof shown === 'string' ? shown : photoTags(shown)],
    },
    async (content) => {
      const work = join(content, '.work');
      const [derived, cached] = [join(work, 'public/photos'), join(work, 'cache/photos')];
      try {
        return await use({
          content,
          derived,
          cached,
          derive: async (options) =>
            derivePhotos(
              await openBook(content, { now: NOON }),
              { contentDir: content, workDir: work, cacheDir: join(work, 'cache') },
              options,
            ),
          write: async (fresh) => {
            for (const [name, bytes] of Object.entries(fresh))
              await writeFile(join(content, placeOf(name)), bytes);
          },
          all: async () => (await Promise.all([readdir(derived), readdir(cached)])).flat(),
          manifest: async () => JSON.parse(await readFile(join(work, 'photos.json'), 'utf8')),
        });
      } finally {
        await rm(work, { recursive: true, force: true });
      }
    },
  );
}

/** What an entry says to show photos. */
export const photoTags = (names: readonly string[]): string =>
  names.map((name) => `<Photo file="${name}" alt="The ram" caption="The ram" />`).join('\n\n');

/** The file of records with one record of a photo in it, with these lines. */
export const photoRecord = (file: string, lines: readonly string[]): Files => ({
  [RECORDS]: [`- id: one`, `file: ${JSON.stringify(file)}`, ...lines].join('\n  ').concat('\n'),
});
