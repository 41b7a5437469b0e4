import { symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { photoProblems } from '../../src/photo/check.ts';
import { readContent } from '../../src/read/content.ts';
import { inPhotoFolder, type PhotoFolder } from './photo-folder.ts';

const picture = (width = 60, height = 40) =>
  sharp({ create: { width, height, channels: 3, background: '#386' } });

/** Several pictures one after the other in one file. */
const animated = async () => {
  const frames = await Promise.all(
    ['#f00', '#00f'].map((background) =>
      sharp({ create: { width: 60, height: 40, channels: 3, background } })
        .png()
        .toBuffer(),
    ),
  );
  return sharp(frames, { join: { animated: true } })
    .gif()
    .toBuffer();
};

const sixteenBits = () =>
  sharp(new Uint16Array(60 * 40 * 3).fill(30_000), { raw: { width: 60, height: 40, channels: 3 } })
    .toColourspace('rgb16')
    .png()
    .toBuffer();

const said = (problems: Awaited<ReturnType<PhotoFolder['derive']>>) =>
  problems.map(({ file, level, code, message, fix }) => [file, level, code, message, fix]);

const asChecked = async ({ content }: PhotoFolder) =>
  said([...(await photoProblems(await readContent(content), content, join(content, '.cache')))]);

describe('a photo that is odd is published all the same, and said to be', () => {
  test.each([
    [
      'in print colours',
      'press.jpg',
      () => picture().toColourspace('cmyk').jpeg().toBuffer(),
      'photo/print-colours',
      'the photo is in print colours (CMYK); they are turned into sRGB and may look different',
      'export it anew in sRGB',
    ],
    [
      'with sixteen bits',
      'deep.png',
      sixteenBits,
      'photo/depth',
      'the photo has more than 8 bits for each colour; 8 are published',
      'export it anew with 8 bits',
    ],
    [
      'animated',
      'moving.gif',
      animated,
      'photo/animated',
      'the file holds 2 pictures; only the first is published',
      'save the picture you mean as JPEG',
    ],
    [
      'one pixel large',
      'dot.jpg',
      () => picture(1, 1).jpeg().toBuffer(),
      'photo/tiny',
      'the photo is 1 × 1 pixels, too small to show anything',
      'put the original there',
    ],
    [
      'named for another format',
      'really-png.jpg',
      () => picture().png().toBuffer(),
      'photo/ending',
      'the photo is a PNG file by its content',
      'let its name end in .png',
    ],
  ])('%s', async (_, name, make, code, message, fix) => {
    await inPhotoFolder({ [name]: await make() }, async (folder) => {
      const problems = [[`press/photos/${name}`, 'warning', code, message, fix]];
      expect(await asChecked(folder)).toEqual(problems);
      expect(said(await folder.derive())).toEqual(problems);
      expect(said(await folder.derive()), 'a second time').toEqual(problems);
      const [size] = (await folder.manifest())[`press/${name}`]?.sizes ?? [];
      const { format, space, depth, pages } = await sharp(
        join(folder.derived, size?.files.webp ?? ''),
      ).metadata();
      expect([format, space, depth, pages ?? 1]).toEqual(['webp', 'srgb', 'uchar', 1]);
    });
  });
});

test.each(['the ram, seen from above.jpg', 'Stößel.jpg', 'プレス機.jpg', 'ram (2).JPG', 'b&w.jpg'])(
  'a photo named "%s" is published under a plain name',
  async (name) => {
    await inPhotoFolder({ [name]: await picture().jpeg().toBuffer() }, async (folder) => {
      expect(await asChecked(folder)).toEqual([]);
      expect(await folder.derive()).toEqual([]);
      const [size] = (await folder.manifest())[`press/${name}`]?.sizes ?? [];
      for (const file of Object.values(size?.files ?? { none: '' }))
        expect(file).toMatch(/^[0-9a-f]{16}-[0-9a-f]{8}-60\.(avif|webp)$/);
    });
  },
);

test('a link is not followed, neither by the check nor when photos are derived', async () => {
  const own = { 'own.jpg': await picture().jpeg().toBuffer() };
  await inPhotoFolder(
    own,
    async (folder) => {
      const outside = join(folder.content, 'private.jpg');
      await writeFile(outside, await picture(70, 50).jpeg().toBuffer());
      await symlink(outside, join(folder.content, 'press/photos/link.jpg'));
      expect((await readContent(folder.content)).problems).toEqual([
        expect.objectContaining({
          file: 'press/photos/link.jpg',
          code: 'photo/link',
          message: 'the photo is a link to a file elsewhere, which is not followed',
          fix: 'put the file itself there',
        }),
      ]);
      expect((await folder.derive()).map(({ file, level }) => [file, level])).toEqual([
        ['press/photos/link.jpg', 'error'],
      ]);
      expect(Object.keys(await folder.manifest())).toEqual(['press/own.jpg']);
    },
    ['own.jpg', 'link.jpg'],
  );
});

test('a drawing of lines is no photo, whatever its name', async () => {
  const drawing = `<svg xmlns="http://www.w3.org/2000/svg" width="60" height="40"><rect width="60" height="40"/></svg>`;
  await inPhotoFolder({ 'ram.jpg': drawing, 'ram.svg': drawing }, async (folder) => {
    const problems = ['ram.jpg', 'ram.svg'].map((name) => [
      `press/photos/${name}`,
      'error',
      'photo/unreadable',
      "the photo can't be read: it is no picture",
      'export it anew as JPEG',
    ]);
    expect(said(await folder.derive())).toEqual(problems);
  });
});
