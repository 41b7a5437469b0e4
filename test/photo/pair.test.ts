import { join } from 'node:path';
import sharp from 'sharp';
import { ssim } from 'ssim.js';
import { describe, expect, test } from 'vitest';
import { FILL } from '../../src/photo/recipe.ts';
import { inPhotoFolder, type PhotoFolder } from './photo-folder.ts';

const [WIDTH, HEIGHT] = [1600, 1200];
/** Marks on the machine that are looked for in both halves, in pixels of the photo from before. */
const MARKS = [
  [560, 420],
  [1040, 440],
  [600, 800],
  [1020, 780],
] as const;
const TURN = -7;
const SCALE = 0.8;

type Point = readonly [number, number];

/** Where a point of the photo from before lies in the later one: turned about its middle, made smaller, and moved. */
function later([x, y]: Point): Point {
  const angle = (TURN * Math.PI) / 180;
  const [across, down] = [(x - WIDTH / 2) * SCALE, (y - HEIGHT / 2) * SCALE];
  return [
    WIDTH / 2 + across * Math.cos(angle) - down * Math.sin(angle) + 60,
    HEIGHT / 2 + across * Math.sin(angle) + down * Math.cos(angle) - 35,
  ];
}

/** A grey machine with four red discs and an area to hide, drawn by librsvg with or without the move. */
async function photo(moved: boolean, taken: string): Promise<Buffer> {
  const move = moved
    ? `translate(${WIDTH / 2 + 60} ${HEIGHT / 2 - 35}) rotate(${TURN}) scale(${SCALE}) translate(${-WIDTH / 2} ${-HEIGHT / 2})`
    : '';
  const discs = MARKS.map(([x, y]) => `<circle cx="${x}" cy="${y}" r="14" fill="#d01010"/>`).join(
    '',
  );
  const ribs = Array.from(
    { length: 30 },
    (_, rib) =>
      `<rect x="${rib * 54}" y="0" width="${6 + (rib % 5) * 5}" height="1200" fill="#8a9aa0"/>`,
  );
  return sharp(
    Buffer.from(
      `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${HEIGHT}"><rect width="1600" height="1200" fill="#fff"/>` +
        `<g transform="${move}"><rect width="1600" height="1200" fill="#c8d2d6"/>${ribs.join('')}${discs}` +
        '<rect x="760" y="560" width="160" height="80" fill="#00ff00"/></g></svg>',
    ),
  )
    .removeAlpha()
    .withExif({ IFD2: { DateTimeOriginal: `${taken.replaceAll('-', ':')} 12:00:00` } })
    .jpeg({ quality: 95, chromaSubsampling: '4:4:4' })
    .toBuffer();
}

const PHOTOS = {
  'before.jpg': await photo(false, '2025-03-01'),
  'after.jpg': await photo(true, '2025-08-02'),
};
const points = (one: Point, other: Point) =>
  [one, other].map(([x, y]) => `${(x / WIDTH).toFixed(5)} ${(y / HEIGHT).toFixed(5)}`).join(', ');
const pair = (before: string, after: string) =>
  `<PhotoPair before="before.jpg" after="after.jpg" before-alt="a" after-alt="b" caption="c" before-at="${before}" after-at="${after}" />`;
const BEFORE_AT = points(MARKS[0], MARKS[3]);
const ALIGNED = pair(BEFORE_AT, points(later(MARKS[0]), later(MARKS[3])));

/** The largest picture of both halves, as pixels. */
async function halves({ manifest, derived }: PhotoFolder) {
  const listed = Object.entries(await manifest()).filter(([key]) =>
    / \/ (before|after)$/.test(key),
  );
  return Promise.all(
    listed.map(async ([key, { sizes }]) => {
      const { data, info } = await sharp(join(derived, sizes.at(-1)?.files.webp ?? ''))
        .ensureAlpha()
        .raw()
        .toBuffer({ resolveWithObject: true });
      return {
        side: key.split(' / ').at(-1),
        width: info.width,
        height: info.height,
        data: new Uint8ClampedArray(data),
      };
    }),
  );
}

type Picture = Awaited<ReturnType<typeof halves>>[number];

/** Middles of the red discs: the mean place of red pixels in each quarter around the middle of them all. */
function discs({ data, width }: Picture): Point[] {
  const red: Point[] = [];
  for (let start = 0; start < data.length; start += 4)
    if ((data[start] ?? 0) - (data[start + 1] ?? 0) > 90)
      red.push([(start / 4) % width, Math.floor(start / 4 / width)]);
  const mean = (points: readonly Point[]): Point => [
    points.reduce((sum, [x]) => sum + x, 0) / points.length,
    points.reduce((sum, [, y]) => sum + y, 0) / points.length,
  ];
  const [middleX, middleY] = mean(red);
  return [false, true].flatMap((low) =>
    [false, true].map((right) =>
      mean(red.filter(([x, y]) => x > middleX === right && y > middleY === low)),
    ),
  );
}

describe('a pair with two points on each photo', () => {
  test('lies on one another within a pixel, after a turn of 7° and a scale of 0.8', async () => {
    await inPhotoFolder(
      PHOTOS,
      async (folder) => {
        expect(await folder.derive()).toEqual([]);
        const [one, other] = await halves(folder);
        if (!one || !other) throw new Error('there are not two halves');
        expect([one.width, one.height]).toEqual([other.width, other.height]);
        const [found, wanted] = [discs(other), discs(one)];
        expect(found).toHaveLength(4);
        for (const [index, [x, y]] of found.entries()) {
          const [wantedX, wantedY] = wanted[index] ?? [0, 0];
          expect(Math.hypot(x - wantedX, y - wantedY)).toBeLessThan(0.5);
        }
        // Likeness by a program that is not ours; the same two photos not aligned reach less than half of it.
        expect(ssim(one, other).mssim).toBeGreaterThan(0.9);
      },
      ALIGNED,
    );
  });

  test('shows nothing from beyond the edge of either photo', async () => {
    await inPhotoFolder(
      PHOTOS,
      async (folder) => {
        await folder.derive();
        for (const { data, width, height } of await halves(folder)) {
          const corners = [0, width - 1, (height - 1) * width, height * width - 1];
          for (const corner of corners)
            expect(Math.min(...data.subarray(corner * 4, corner * 4 + 3))).toBeGreaterThan(100);
        }
      },
      ALIGNED,
    );
  });

  test('keeps hidden what is hidden on each, in every file', async () => {
    const after = [later([740, 540]), later([940, 540]), later([940, 660]), later([740, 660])];
    const outline = after.map(([x, y]) => `[${x / WIDTH}, ${y / HEIGHT}]`).join(', ');
    const records =
      '- { id: one, file: before.jpg, hide: [{ what: plate, box: [0.46, 0.45, 0.13, 0.1] }] }\n' +
      `- { id: two, file: after.jpg, hide: [{ what: plate, outline: [${outline}] }] }\n`;
    await inPhotoFolder(
      { ...PHOTOS, 'photos.yaml': records },
      async (folder) => {
        expect(await folder.derive()).toEqual([]);
        const sizes = Object.values(await folder.manifest()).flatMap((photo) => photo.sizes);
        for (const file of sizes.flatMap(({ files }) => Object.values(files))) {
          const { data, info } = await sharp(join(folder.derived, file))
            .raw()
            .toBuffer({ resolveWithObject: true });
          let green = 0;
          for (let start = 0; start < data.length; start += info.channels)
            if ((data[start + 1] ?? 0) - (data[start] ?? 0) > 60) green++;
          expect(green, file).toBe(0);
        }
        const [one, other] = await halves(folder);
        const fill = [1, 3, 5].map((at) => Number.parseInt(FILL.slice(at, at + 2), 16));
        for (const half of [one, other]) {
          if (!half) throw new Error('there are not two halves');
          const grey = half.data.filter(
            (level, index) => index % 4 === 0 && Math.abs(level - (fill[0] ?? 0)) < 12,
          );
          expect(grey.length).toBeGreaterThan(3000);
        }
      },
      ALIGNED,
    );
  });

  test('is made once, and gone when the entry no longer shows it', async () => {
    await inPhotoFolder(
      PHOTOS,
      async (folder) => {
        await folder.derive();
        const before = await folder.all();
        await folder.derive();
        expect(await folder.all()).toEqual(before);
      },
      ALIGNED,
    );
  });
});

describe('is refused, with place and fix,', () => {
  test('a pair whose points have too little in common', async () => {
    await inPhotoFolder(
      PHOTOS,
      async (folder) => {
        expect(await folder.derive()).toMatchObject([
          {
            file: 'press/entries/2025-04-13-the-ram-slides.mdx',
            code: 'photo/pair',
            message:
              '<PhotoPair> by these points "before.jpg" and "after.jpg" have too little in common',
            fix: 'let before-at and after-at name the same two places in the same order',
          },
        ]);
      },
      pair('0.1 0.1, 0.2 0.1', '0.9 0.9, 0.1 0.1'),
    );
  });

  test('with a warning, a pair the wrong way round in time', async () => {
    const swapped = ALIGNED.replace(
      'before="before.jpg" after="after.jpg"',
      'before="after.jpg" after="before.jpg"',
    );
    await inPhotoFolder(
      PHOTOS,
      async (folder) => {
        expect(await folder.derive()).toMatchObject([
          {
            code: 'photo/pair-order',
            level: 'warning',
            message:
              '<PhotoPair> the photo from before was taken on 2025-08-02, after the later one (2025-03-01)',
          },
        ]);
      },
      swapped,
    );
  });
});
