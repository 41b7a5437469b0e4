import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { openBook } from '../../src/book/open.ts';
import { type DeriveOptions, derivePhotos } from '../../src/photo/derive.ts';
import type { PhotoManifest } from '../../src/photo/manifest.ts';
import type { Problem } from '../../src/read/problem.ts';
import { type Files, inContentFolder, NOON } from '../check/content-folder.ts';

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
}

/** Writes photos by name into a small project whose entry shows the ones named in `shown`, or all. */
export async function inPhotoFolder<Result>(
  photos: Files,
  use: (folder: PhotoFolder) => Promise<Result>,
  shown: readonly string[] = Object.keys(photos),
): Promise<Result> {
  const files = Object.entries(photos).map(([name, bytes]) => [`press/photos/${name}`, bytes]);
  const entry = 'press/entries/2025-04-13-the-ram-slides.mdx';
  return inContentFolder(
    { ...Object.fromEntries(files), [entry]: ['<Tally />', photoTags(shown)] },
    async (content) => {
      const work = join(content, '.work');
      try {
        return await use({
          content,
          derived: join(work, 'public/photos'),
          cached: join(work, 'cache/photos'),
          derive: async (options) =>
            derivePhotos(
              await openBook(content, { now: NOON }),
              { contentDir: content, workDir: work, cacheDir: join(work, 'cache') },
              options,
            ),
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
