import { join } from 'node:path';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { inPhotoFolder } from './photo-folder.ts';

const WIDTH = 48;
const HEIGHT = 32;

/** A colour for each quarter of the upright picture, from the top left, line by line. */
const QUARTERS = {
  red: [255, 0, 0],
  green: [0, 255, 0],
  blue: [0, 0, 255],
  white: [255, 255, 255],
};

/** Where the first row and the first column of the stored pixels belong in the upright picture (TIFF 6.0 section 8, Orientation; EXIF 2.3 tag 0x0112). */
const ORIENTATIONS = [
  [1, 'top', 'left'],
  [2, 'top', 'right'],
  [3, 'bottom', 'right'],
  [4, 'bottom', 'left'],
  [5, 'left', 'top'],
  [6, 'right', 'top'],
  [7, 'right', 'bottom'],
  [8, 'left', 'bottom'],
] as const;

test.each(ORIENTATIONS)(
  'a photo stored with orientation %i, first row at the %s, is published upright',
  async (orientation, firstRow, firstColumn) => {
    const photo = await storedPhoto(orientation, [firstRow, firstColumn]);
    await inPhotoFolder({ 'ram.jpg': photo }, async (folder) => {
      expect(await folder.derive()).toEqual([]);
      const [size] = (await folder.manifest())['press/ram.jpg']?.sizes ?? [];
      expect([size?.width, size?.height]).toEqual([WIDTH, HEIGHT]);
      for (const file of Object.values(size?.files ?? { none: '' }))
        expect(await quartersOf(join(folder.derived, file)), file).toEqual(Object.keys(QUARTERS));
    });
  },
);

/** The picture as a camera held that way stores it: its pixels in another order, and a tag that says so. */
async function storedPhoto(
  orientation: number,
  [firstRow, firstColumn]: readonly [string, string],
): Promise<Buffer> {
  const sideways = ['left', 'right'].includes(firstRow);
  const [width, height] = sideways ? [HEIGHT, WIDTH] : [WIDTH, HEIGHT];
  const along = (side: string, index: number) => {
    const length = ['left', 'right'].includes(side) ? WIDTH : HEIGHT;
    return ['left', 'top'].includes(side) ? index : length - 1 - index;
  };
  const pixels: number[] = [];
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const [first, second] = [along(firstRow, row), along(firstColumn, column)];
      pixels.push(...colourAt(sideways ? [first, second] : [second, first]));
    }
  }
  return sharp(Buffer.from(pixels), { raw: { width, height, channels: 3 } })
    .jpeg({ quality: 100, chromaSubsampling: '4:4:4' })
    .withMetadata({ orientation })
    .toBuffer();
}

function colourAt([x, y]: readonly [number, number]): readonly number[] {
  const quarter = (y < HEIGHT / 2 ? 0 : 2) + (x < WIDTH / 2 ? 0 : 1);
  return Object.values(QUARTERS)[quarter] ?? [];
}

/** Names of the colours in the middle of the quarters of a picture. */
async function quartersOf(file: string): Promise<(string | undefined)[]> {
  const { data, info } = await sharp(file).raw().toBuffer({ resolveWithObject: true });
  return [0.25, 0.75].flatMap((down) =>
    [0.25, 0.75].map((across) => {
      const start =
        (Math.floor(info.height * down) * info.width + Math.floor(info.width * across)) *
        info.channels;
      const seen = [...data.subarray(start, start + 3)].map((level) => (level > 128 ? 255 : 0));
      return Object.keys(QUARTERS).find(
        (name) => String(QUARTERS[name as keyof typeof QUARTERS]) === String(seen),
      );
    }),
  );
}
