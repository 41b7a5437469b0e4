import { execFile } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import exifr from 'exifr';
import sharp from 'sharp';
import { describe, expect, inject, test } from 'vitest';
import { inPhotoFolder, type PhotoFolder } from '../photo/photo-folder.ts';
import { filesOf } from '../site/pages.ts';
import { realPhotos } from './real-photos.ts';

const photos = realPhotos();
const missing = inject('missing');

/** What exiftool (Debian's libimage-exiftool-perl) finds in files, without what every picture has: the file, its size, its coding. */
async function found(files: readonly string[]): Promise<Record<string, unknown>[]> {
  const { stdout } = await promisify(execFile)(
    'exiftool',
    ['-json', '-G1', '-a', '-u', '-ee', ...files],
    { maxBuffer: 100_000_000 },
  );
  const plain =
    /^(SourceFile|ExifTool:|File:|System:|RIFF:|Composite:(ImageSize|Megapixels)|PNG:|PNG-pHYs:|QuickTime:|Meta:|Track|Unknown)/;
  const told = (tags: Record<string, unknown>) =>
    Object.entries(tags).filter(([name]) => !plain.test(name));
  return (JSON.parse(stdout) as Record<string, unknown>[]).map((tags) =>
    Object.fromEntries(told(tags)),
  );
}

const derivedFiles = async (folder: PhotoFolder, name: string) =>
  ((await folder.manifest())[`press/${name}`]?.sizes ?? []).flatMap(({ files }) =>
    Object.values(files).map((file) => join(folder.derived, file)),
  );

describe.skipIf(photos.length === 0)('a real photograph', () => {
  test.each(photos)('$name loses all that it tells, in every size and format', async (photo) => {
    const bytes = await readFile(photo.path);
    for (const word of photo.tells) expect(bytes.includes(word), `planted: ${word}`).toBe(true);
    await inPhotoFolder({ [photo.name]: bytes }, async (folder) => {
      const problems = await folder.derive();
      expect(problems.map(({ code }) => code)).toEqual(photo.place ? ['photo/not-looked-at'] : []);
      expect((await folder.manifest())[`press/${photo.name}`]?.taken).toBe(photo.taken);

      const files = await derivedFiles(folder, photo.name);
      expect(files.length).toBeGreaterThanOrEqual(2);
      for (const file of files) {
        const derived = await readFile(file);
        expect(photo.tells.filter((word) => derived.includes(word))).toEqual([]);
        expect(derived.includes('Exif')).toBe(false);
        if (file.endsWith('.avif')) expect(await exifr.parse(derived, true)).toBeFalsy();
      }
    });
  });

  test.skipIf(missing.exiftool)('is stripped to the last tag, as exiftool sees it', async () => {
    const originals = await found(photos.map(({ path }) => path));
    for (const tags of originals) expect(Object.keys(tags).length).toBeGreaterThan(20);
    for (const photo of photos) {
      await inPhotoFolder({ [photo.name]: await readFile(photo.path) }, async (folder) => {
        await folder.derive();
        const told = await found(await derivedFiles(folder, photo.name));
        expect(told).toEqual(told.map(() => ({})));
      });
    }
  });
});

test.skipIf(missing.exiftool)(
  'a TIFF in which exiftool wrote a place and a day is known for both',
  async () => {
    const plain = sharp({ create: { width: 60, height: 40, channels: 3, background: '#963' } });
    await inPhotoFolder({ 'ram.tif': await plain.tiff().toBuffer() }, async (folder) => {
      const place = [
        '-GPSLatitude=54.3',
        '-GPSLatitudeRef=N',
        '-GPSLongitude=2',
        '-GPSLongitudeRef=W',
      ];
      await promisify(execFile)('exiftool', [
        ...['-q', '-overwrite_original', ...place, '-DateTimeOriginal=2025:03:08 10:00:00'],
        join(folder.content, 'press/photos/ram.tif'),
      ]);
      expect((await folder.derive()).map(({ code }) => code)).toEqual(['photo/not-looked-at']);
      expect((await folder.manifest())['press/ram.tif']?.taken).toBe('2025-03-08');
      expect(await found(await derivedFiles(folder, 'ram.tif'))).toEqual([{}, {}]);
    });
  },
);

test.skipIf(missing.exiftool)('exiftool finds nothing in any picture of the site', async () => {
  const { folder } = inject('site');
  const pictures = filesOf(folder).filter((file) => /\.(avif|gif|jpe?g|png|webp)$/i.test(file));
  expect(pictures.length).toBeGreaterThan(100);
  const told = await found(pictures.map((file) => join(folder, file)));
  expect(told).toHaveLength(pictures.length);
  expect(told.filter((tags) => Object.keys(tags).length > 0)).toEqual([]);
});
