import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { FILL } from '../../src/photo/recipe.ts';
import { inPhotoFolder, type PhotoFolder, photoRecord } from './photo-folder.ts';

/** What stands in the areas to hide: a red that is found nowhere else. */
const SECRET = '#ff0000';

/** A pale photo of 2400 by 1800 with a red rectangle and a red triangle in it, stored in any orientation. */
async function photo(orientation = 1): Promise<Buffer> {
  const upright = await sharp(
    Buffer.from(
      `<svg xmlns="http://www.w3.org/2000/svg" width="2400" height="1800"><rect width="2400" height="1800" fill="#dde4d0"/>` +
        `<rect x="480" y="360" width="480" height="180" fill="${SECRET}"/><polygon points="1440,900 1920,900 1680,1440" fill="${SECRET}"/></svg>`,
    ),
  )
    .removeAlpha()
    .png()
    .toBuffer();
  // Orientation 6 is stored a quarter turn back from upright (EXIF 2.32, tag 0x0112).
  const stored = orientation === 6 ? sharp(upright).rotate(270) : sharp(upright);
  return stored.jpeg({ quality: 95 }).withMetadata({ orientation }).toBuffer();
}

const SMALL = { width: 200, height: 100, channels: 3, background: '#e08040' } as const;

const AREAS = [
  'hide:',
  '  - what: plate',
  '    box: [0.2, 0.2, 0.2, 0.1]',
  '  - what: face',
  '    outline: [[0.6, 0.5], [0.8, 0.5], "0.7 0.8"]',
];

/** Share of the pixels of every derived file that have a trace of the red, and the colours at some places of it. */
async function seen(folder: PhotoFolder, places: readonly (readonly [number, number])[]) {
  const sizes = (await folder.manifest())['press/ram.jpg']?.sizes ?? [];
  const files = sizes.flatMap(({ files }) => Object.values(files));
  return Promise.all(
    files.map(async (file) => {
      const { data, info } = await sharp(join(folder.derived, file))
        .raw()
        .toBuffer({ resolveWithObject: true });
      const at = (x: number, y: number) =>
        (Math.floor(y * info.height) * info.width + Math.floor(x * info.width)) * info.channels;
      let red = 0;
      for (let start = 0; start < data.length; start += info.channels)
        if ((data[start] ?? 0) - (data[start + 1] ?? 0) > 40) red++;
      return {
        file,
        red,
        colours: places.map(([x, y]) => [...data.subarray(at(x, y), at(x, y) + 3)]),
      };
    }),
  );
}

const fill = [1, 3, 5].map((at) => Number.parseInt(FILL.slice(at, at + 2), 16));
const near = (colour: readonly number[], wanted: readonly number[]) =>
  Math.max(...wanted.map((level, index) => Math.abs(level - (colour[index] ?? 0)))) < 12;

describe('an area that is to be hidden', () => {
  test.each([1, 6])(
    'is filled with one colour in every size and format, and leaves no trace, with orientation %i',
    async (orientation) => {
      await inPhotoFolder(
        { 'ram.jpg': await photo(orientation), ...photoRecord('ram.jpg', AREAS) },
        async (folder) => {
          expect(await folder.derive()).toEqual([]);
          const places = [
            [0.21, 0.21],
            [0.3, 0.25],
            [0.39, 0.29],
            [0.7, 0.6],
            [0.62, 0.51],
          ] as const;
          const sizes = await seen(folder, places);
          expect(sizes).toHaveLength(6);
          for (const { file, red, colours } of sizes) {
            expect(red, file).toBe(0);
            expect(
              colours.filter((colour) => !near(colour, fill)),
              file,
            ).toEqual([]);
          }
        },
      );
    },
  );

  test('is found by the same look where it is not hidden', async () => {
    await inPhotoFolder({ 'ram.jpg': await photo() }, async (folder) => {
      await folder.derive();
      for (const { red } of await seen(folder, [])) expect(red).toBeGreaterThan(1000);
    });
  });

  test('makes the sizes anew when it is added, and the old ones are gone from site and cache', async () => {
    const bytes = await photo();
    await inPhotoFolder({ 'ram.jpg': bytes }, async (folder) => {
      await folder.derive();
      const before = await folder.all();
      await folder.write(photoRecord('ram.jpg', AREAS));
      await folder.derive();
      const after = await folder.all();
      expect(after).toHaveLength(before.length);
      expect(after.filter((file) => before.includes(file))).toEqual([]);
    });
  });
});

test.each([
  [
    'grey',
    () =>
      sharp({ create: { ...SMALL, background: '#888' } })
        .toColourspace('b-w')
        .jpeg(),
  ],
  ['in print colours', () => sharp({ create: SMALL }).toColourspace('cmyk').jpeg()],
  ['see-through', () => sharp({ create: { ...SMALL, channels: 4, background: '#0f08' } }).webp()],
])('an area is hidden on a photo that is %s', async (_, make) => {
  const record = photoRecord('ram.jpg', ['hide:', '  - { what: plate, box: [0, 0, 0.5, 1] }']);
  const photo = await make().toBuffer();
  await inPhotoFolder({ 'ram.jpg': photo, ...record }, async (folder) => {
    expect((await folder.derive()).filter(({ level }) => level === 'error')).toEqual([]);
    const sizes = await seen(folder, [
      [0.2, 0.5],
      [0.8, 0.5],
    ]);
    expect(sizes).toHaveLength(2);
    for (const { colours } of sizes)
      expect(colours.map((colour) => near(colour, fill))).toEqual([true, false]);
  });
});

describe('a photo that is cropped and straightened', () => {
  test('keeps the part that was named, in its proportions', async () => {
    const record = photoRecord('ram.jpg', ['crop: [0.2, 0.2, 0.2, 0.1]']);
    await inPhotoFolder({ 'ram.jpg': await photo(), ...record }, async (folder) => {
      await folder.derive();
      const sizes = (await folder.manifest())['press/ram.jpg']?.sizes ?? [];
      expect(sizes.map(({ width, height }) => [width, height])).toEqual([[480, 180]]);
      for (const { colours } of await seen(folder, [[0.5, 0.5]]))
        expect(near(colours[0] ?? [], [255, 0, 0])).toBe(true);
    });
  });

  test('has no empty corner, and is somewhat smaller', async () => {
    const record = photoRecord('ram.jpg', ['straighten: -3', 'nothing-to-hide: true']);
    await inPhotoFolder({ 'ram.jpg': await photo(), ...record }, async (folder) => {
      await folder.derive();
      const [{ width = 0, height = 0 } = {}] =
        (await folder.manifest())['press/ram.jpg']?.sizes.slice(-1) ?? [];
      expect(width / height).toBeCloseTo(2400 / 1800, 2);
      const corners = [0.002, 0.998].flatMap((x) => [0.002, 0.998].map((y) => [x, y] as const));
      for (const { colours } of await seen(folder, corners))
        expect(colours.filter((colour) => !near(colour, [0xdd, 0xe4, 0xd0]))).toEqual([]);
    });
  });
});
