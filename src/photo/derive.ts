import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Book } from '../book/types.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { PhotoManifest, PhotoSize, PublishedPhoto } from './manifest.ts';

const WIDTHS = [480, 960, 1600];

/** Part of every derived file's name; raise it when the recipe changes, so that nothing old is taken for new. */
const RECIPE = 1;

/** Pixels that are decoded at the most: 100 megapixels, so that a small file cannot ask for all memory. */
const MOST_PIXELS = 100_000_000;

/**
 * Makes the published sizes of every photo that an entry shows, in `<workDir>/public/photos`, and lists them in `<workDir>/photos.json`.
 * Sizes that are there already, by the hash of the original, are kept; files that no photo needs any more are removed.
 * Pixels are copied and nothing else: no EXIF, no GPS, no colour profile; the original itself is only read.
 */
export async function derivePhotos(
  book: Book,
  contentDir: string,
  workDir: string,
): Promise<Problem[]> {
  const folder = join(workDir, 'public', 'photos');
  await mkdir(folder, { recursive: true });
  const ready = new Set(await readdir(folder));
  const manifest: Record<string, PublishedPhoto> = {};
  const problems: Problem[] = [];

  for (const { key, file } of usedPhotos(book)) {
    try {
      manifest[key] = await derive(join(contentDir, file), folder, ready);
    } catch (error) {
      problems.push(
        problemAt(
          { file, line: 1, column: 1 },
          'photo/unreadable',
          `the photo can't be read: ${(error as Error).message.split('\n')[0]}`,
          'export it anew as JPEG',
        ),
      );
    }
  }
  const needed = new Set(
    Object.values(manifest).flatMap(({ sizes }) => sizes.map(({ file }) => file)),
  );
  await Promise.all(
    [...ready].filter((file) => !needed.has(file)).map((file) => rm(join(folder, file))),
  );
  await writeWhole(join(workDir, 'photos.json'), JSON.stringify(manifest satisfies PhotoManifest));
  return problems;
}

/** Photos that an entry shows or a reading names. */
function usedPhotos(book: Book): { key: string; file: string }[] {
  const names = book.projects.flatMap((project) => {
    const shown = project.entries.flatMap(({ components }) =>
      components
        .filter(({ name }) => name === 'Photo')
        .flatMap(({ props }) => props.find(({ name }) => name === 'file')?.literal ?? []),
    );
    const read = project.readings.flatMap(({ reading }) => reading.photo ?? []);
    return [...shown, ...read].map((name) => ({
      key: `${project.id}/${name}`,
      file: `${project.id}/photos/${name}`,
    }));
  });
  return [...new Map(names.map((photo) => [photo.key, photo])).values()];
}

async function derive(
  original: string,
  folder: string,
  ready: ReadonlySet<string>,
): Promise<PublishedPhoto> {
  const bytes = await readFile(original);
  const hash = createHash('sha256').update(bytes).digest('hex').slice(0, 16);
  const input = () => sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: 'error' });
  const { autoOrient } = await input().metadata();
  const widths = [...new Set(WIDTHS.map((width) => Math.min(width, autoOrient.width)))];
  return {
    sizes: await Promise.all(
      widths.map(async (width): Promise<PhotoSize> => {
        const file = `${hash}-${RECIPE}-${width}.webp`;
        const height = Math.max(1, Math.round((autoOrient.height * width) / autoOrient.width));
        if (!ready.has(file)) {
          const picture = await input()
            .autoOrient()
            .resize(width, height, { fit: 'fill' })
            .toColourspace('srgb')
            .webp({ quality: 78, effort: 4 })
            .toBuffer();
          await writeWhole(join(folder, file), picture);
        }
        return { file, width, height };
      }),
    ),
  };
}

// A name appears only once its file is whole, so that an interrupted run leaves nothing half-made to be trusted later.
async function writeWhole(path: string, content: string | Uint8Array): Promise<void> {
  const fresh = `${path}.${process.pid}.new`;
  await writeFile(fresh, content);
  await rename(fresh, path);
}
