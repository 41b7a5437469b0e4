import { createHash } from 'node:crypto';
import { readdir, rename, rm, stat, unlink, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { inPhotoFolder, type PhotoFolder } from './photo-folder.ts';

const picture = (background: string) =>
  sharp({ create: { width: 90, height: 60, channels: 3, background } })
    .withExif({ IFD2: { DateTimeOriginal: '2025:03:08 23:59:00' } })
    .jpeg()
    .toBuffer();

const [red, blue] = [await picture('#f00'), await picture('#00f')];
const original = ({ content }: PhotoFolder) => join(content, 'press/photos/ram.jpg');

/** How many photos are worked on. */
async function made(folder: PhotoFolder, options = {}): Promise<number> {
  const lines: string[] = [];
  const listener = { isTerminal: false, write: (text: string) => lines.push(text), now: () => 0 };
  await folder.derive({ ...options, listener });
  return Number(/^Photos (\d+)/.exec(lines.at(-1) ?? 'Photos 0')?.[1]);
}

describe('the cache of photos', () => {
  test('lets a second run work on nothing, and a changed or added photo alone be worked on', async () => {
    await inPhotoFolder({ 'ram.jpg': red, 'bed.jpg': blue }, async (folder) => {
      expect(await made(folder)).toBe(2);
      expect(await made(folder)).toBe(0);
      await writeFile(original(folder), await picture('#0f0'));
      expect(await made(folder)).toBe(1);
      expect(await made(folder)).toBe(0);
    });
  });

  test('serves another site folder, so that nothing is encoded again', async () => {
    await inPhotoFolder({ 'ram.jpg': red }, async (folder) => {
      await folder.derive();
      const [file = ''] = await readdir(folder.derived);
      const before = await stat(join(folder.cached, file));
      await rm(folder.derived, { recursive: true });
      expect(await made(folder)).toBe(0);
      expect((await stat(join(folder.derived, file))).mtimeMs).toBe(before.mtimeMs);
    });
  });

  test('is enough after its index was lost: the original is read, and nothing encoded', async () => {
    await inPhotoFolder({ 'ram.jpg': red }, async (folder) => {
      await folder.derive();
      const [file = ''] = await readdir(folder.cached);
      const before = await stat(join(folder.cached, file));
      const listed = await folder.manifest();
      await rm(join(folder.cached, '../photos.json'));
      expect(await made(folder)).toBe(1);
      expect((await stat(join(folder.cached, file))).mtimeMs).toBe(before.mtimeMs);
      expect(await folder.manifest()).toEqual(listed);
    });
  });

  test('makes what is missing of a run that was broken off', async () => {
    await inPhotoFolder({ 'ram.jpg': red }, async (folder) => {
      await folder.derive();
      const files = await readdir(folder.cached);
      await unlink(join(folder.cached, files[0] ?? ''));
      expect(await made(folder)).toBe(1);
      expect(await readdir(folder.cached)).toEqual(files);
    });
  });

  test('notices another picture of the same size and time', async () => {
    await inPhotoFolder({ 'ram.jpg': red }, async (folder) => {
      await folder.derive();
      const { mtime } = await stat(original(folder));
      const { colour } = (await folder.manifest())['press/ram.jpg'] ?? {};
      expect(blue).toHaveLength(red.length);
      await writeFile(`${original(folder)}.new`, blue);
      await utimes(`${original(folder)}.new`, mtime, mtime);
      await rename(`${original(folder)}.new`, original(folder));
      expect(await made(folder)).toBe(1);
      expect((await folder.manifest())['press/ram.jpg']?.colour).not.toBe(colour);
    });
  });

  test('reads every original when it is asked to verify', async () => {
    await inPhotoFolder({ 'ram.jpg': red }, async (folder) => {
      await folder.derive();
      expect(await made(folder, { verify: true })).toBe(1);
    });
  });
});

test('what binds a claim to a photo is listed with it: its hash, and the day it was taken', async () => {
  await inPhotoFolder({ 'ram.jpg': red }, async (folder) => {
    await folder.derive();
    expect((await folder.manifest())['press/ram.jpg']).toMatchObject({
      sha256: createHash('sha256').update(red).digest('hex'),
      taken: '2025-03-08',
    });
  });
});
