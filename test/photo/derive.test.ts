import { readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { inPhotoFolder, type PhotoFolder, photoTags } from './photo-folder.ts';

const picture = (width: number, height: number, background = '#8a8') =>
  sharp({ create: { width, height, channels: 3, background } })
    .jpeg()
    .toBuffer();

const timesIn = async ({ derived }: PhotoFolder) =>
  Object.fromEntries(
    await Promise.all(
      (await readdir(derived)).map(async (file) => [
        file,
        (await stat(join(derived, file))).mtimeMs,
      ]),
    ),
  );

const sizesOf = async (folder: PhotoFolder, name: string) =>
  ((await folder.manifest())[`press/${name}`]?.sizes ?? []).map(
    ({ width, height }) => `${width}×${height}`,
  );

describe('derivePhotos', () => {
  test('makes three widths of a large photo, in its proportions, and lists them', async () => {
    await inPhotoFolder({ 'ram.jpg': await picture(2400, 1800) }, async (folder) => {
      expect(await folder.derive()).toEqual([]);
      expect(await sizesOf(folder, 'ram.jpg')).toEqual(['480×360', '960×720', '1920×1440']);
      const files = ((await folder.manifest())['press/ram.jpg']?.sizes ?? []).flatMap(({ files }) =>
        Object.values(files),
      );
      expect((await readdir(folder.derived)).sort()).toEqual([...files].sort());
    });
  });

  test('makes nothing larger than the photo itself', async () => {
    const photos = { 'small.jpg': await picture(300, 200), 'middling.jpg': await picture(700, 70) };
    await inPhotoFolder(photos, async (folder) => {
      await folder.derive();
      expect(await sizesOf(folder, 'small.jpg')).toEqual(['300×200']);
      expect(await sizesOf(folder, 'middling.jpg')).toEqual(['480×48', '700×70']);
    });
  });

  test('derives only photos that an entry shows, and leaves the originals as they are', async () => {
    const [shown, kept] = [await picture(100, 80), await picture(100, 80, '#a33')];
    const photos = { 'shown.jpg': shown, 'kept.jpg': kept };
    await inPhotoFolder(
      photos,
      async (folder) => {
        await folder.derive();
        expect(Object.keys(await folder.manifest())).toEqual(['press/shown.jpg']);
        expect(await readdir(folder.derived)).toHaveLength(2);
        expect(await readFile(join(folder.content, 'press/photos/shown.jpg'))).toEqual(shown);
      },
      ['shown.jpg'],
    );
  });

  test('derives nothing again when nothing has changed', async () => {
    await inPhotoFolder({ 'ram.jpg': await picture(1000, 700) }, async (folder) => {
      await folder.derive();
      const [times, listed] = [await timesIn(folder), await folder.manifest()];
      expect(Object.keys(times)).toHaveLength(6);
      expect(await folder.derive()).toEqual([]);
      expect(await timesIn(folder)).toEqual(times);
      expect(await folder.manifest()).toEqual(listed);
    });
  });

  test('derives a photo anew when another picture has its name, and drops the old sizes', async () => {
    await inPhotoFolder({ 'ram.jpg': await picture(600, 400) }, async (folder) => {
      await folder.derive();
      const before = await readdir(folder.derived);
      await writeFile(
        join(folder.content, 'press/photos/ram.jpg'),
        await picture(600, 400, '#338'),
      );
      await folder.derive();
      const after = await readdir(folder.derived);
      expect(after).toHaveLength(4);
      expect(after.filter((file) => before.includes(file))).toEqual([]);
    });
  });

  test('removes sizes that no entry needs any more, and files that a broken-off run left', async () => {
    const photos = { 'one.jpg': await picture(200, 100), 'two.jpg': await picture(300, 100) };
    await inPhotoFolder(photos, async (folder) => {
      await folder.derive();
      expect(await readdir(folder.derived)).toHaveLength(4);
      for (const place of [folder.derived, folder.cached])
        await writeFile(join(place, 'half.webp.4711.new'), 'half');
      const entry = join(folder.content, 'press/entries/2025-04-13-the-ram-slides.mdx');
      const text = await readFile(entry, 'utf8');
      await writeFile(
        entry,
        text.replace(photoTags(['one.jpg', 'two.jpg']), photoTags(['two.jpg'])),
      );
      await folder.derive();
      const [size] = (await folder.manifest())['press/two.jpg']?.sizes ?? [];
      const files = Object.values(size?.files ?? {});
      expect(await readdir(folder.derived)).toEqual(files);
      expect(await readdir(folder.cached)).toEqual(expect.arrayContaining(files));
      expect(await readdir(folder.cached)).not.toContain('half.webp.4711.new');
    });
  });
});
