import { createHash } from 'node:crypto';
import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import exifr from 'exifr';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { CARD, type Card, drawCard } from '../../src/card/draw-card.ts';
import { writeIndexedPng } from '../../src/card/indexed-png.ts';
import { loadLettering } from '../../src/card/lettering.ts';
import { makeCard } from '../../src/card/make-card.ts';
import { PALETTE, paintCard } from '../../src/card/paint-card.ts';

const lettering = await loadLettering();

const plain: Card = {
  over: '1958 Hallin 3',
  title: 'Insulation of the loom',
  value: '20.5 ± 1.2 MΩ',
  lines: ['before 4.0 ± 1.2 MΩ, after 20.5 ± 1.2 MΩ: changed', 'meets its limits'],
  block: [
    ['Owner', 'Ines Marlow'],
    ['Document', 'Measured spec'],
    ['Date', '1 Mar 2025'],
    ['Uncertainty', 'U at 95 %'],
  ],
};

/** How dark a piece of the card is: the share of its pixels that are nearer to ink than to paper. */
async function ink(card: Card, [left, top, width, height]: readonly number[]): Promise<number> {
  const png = await sharp(writeIndexedPng(paintCard(drawCard(card, lettering), lettering), PALETTE))
    .extract({ left: left ?? 0, top: top ?? 0, width: width ?? 1, height: height ?? 1 })
    .greyscale()
    .raw()
    .toBuffer();
  return png.filter((grey) => grey < 160).length / png.length;
}

async function inCache<Result>(use: (folder: string) => Promise<Result>): Promise<Result> {
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-cards-'));
  try {
    return await use(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

describe('a card', () => {
  test('is a PNG of 1200 by 630 that says nothing of its maker', () =>
    inCache(async (folder) => {
      const png = Buffer.from(await makeCard(plain, folder));
      const { format, width, height, exif, icc, xmp, comments } = await sharp(png).metadata();
      expect([format, width, height]).toEqual(['png', 1200, 630]);
      expect([exif, icc, xmp, comments]).toEqual([undefined, undefined, undefined, undefined]);
      const read = await exifr.parse(png, true).catch(() => undefined);
      const named = Object.keys(read ?? {}).filter(
        (key) => !/^(Image|Bit|Color|Compr|Filter|Interl)/.test(key),
      );
      expect(named).toEqual([]);
      const chunks = [...png.toString('latin1').matchAll(/(tEXt|iTXt|zTXt|eXIf|tIME)/g)];
      expect(chunks).toEqual([]);
    }));

  test('has the same bytes on any machine', () =>
    inCache(async (folder) => {
      const png = await makeCard(plain, folder);
      expect(createHash('sha256').update(png).digest('hex')).toBe(
        '070d1540bb3951dc845db4f259f30c8163291478e425c0a852bbe20829107592',
      );
    }));

  test('is drawn once, and drawn anew when anything on it changes', () =>
    inCache(async (folder) => {
      const first = await makeCard(plain, folder);
      expect(await makeCard(plain, folder)).toEqual(first);
      expect(await readdir(folder)).toHaveLength(1);
      expect(await makeCard({ ...plain, value: '20.6 ± 1.2 MΩ' }, folder)).not.toEqual(first);
      const files = await readdir(folder);
      expect(files).toHaveLength(2);
      expect(files.filter((file) => !file.endsWith('.png'))).toEqual([]);
    }));

  test('has ink where its words stand, and none where none is', async () => {
    const { value: _, ...without } = plain;
    // Title, number, the two lines, and the four fields of the title block.
    expect(await ink(plain, [80, 130, 700, 60])).toBeGreaterThan(0.05);
    expect(await ink(plain, [80, 230, 700, 90])).toBeGreaterThan(0.05);
    expect(await ink(plain, [80, 350, 800, 80])).toBeGreaterThan(0.01);
    for (const field of [0, 1, 2, 3])
      expect(await ink(plain, [50 + field * 282, 550, 180, 36])).toBeGreaterThan(0.03);
    expect(await ink(plain, [50, 440, 1100, 60])).toBe(0);
    expect(await ink({ ...without, lines: [] }, [50, 330, 1100, 160])).toBe(0);
  });

  test.each([
    ['plain', plain],
    ['without a value', { ...plain, value: undefined }],
    [
      'with a very long title',
      { ...plain, title: 'Height of everything that there is '.repeat(9) },
    ],
    ['with one endless word', { ...plain, title: 'Donaudampfschiff'.repeat(12) }],
    [
      'with a long value',
      { ...plain, value: '123,456.789 ± 0.012 ft²/gal(US), and then some more' },
    ],
    ['with endless lines', { ...plain, lines: ['so much to say '.repeat(30), 'x'.repeat(300)] }],
    [
      'with a long owner',
      {
        ...plain,
        block: [
          ['Owner', 'A'.repeat(80)],
          ['Date', 'now'],
        ],
      },
    ],
    ['with nothing in it', { over: '', title: '', value: '', lines: [''], block: [['', '']] }],
  ] as [string, Card][])(
    '%s stays within its frame, and has only numbers in it',
    async (_, card) => {
      const { bars, texts } = drawCard(card, lettering);
      const numbers = [...bars.flat(), ...texts.flatMap(({ x, y, size }) => [x, y, size])];
      expect(numbers.filter((number) => !Number.isFinite(number))).toEqual([]);
      // Between the outer frame and the edge, and between the two frames.
      const bands = [
        [0, 0, CARD.width, 16],
        [0, 614, CARD.width, 16],
        [0, 0, 16, CARD.height],
        [1184, 0, 16, CARD.height],
        [21, 21, 12, 588],
        [1167, 21, 12, 588],
      ];
      for (const band of bands) expect(await ink(card, band), `${band}`).toBe(0);
    },
  );
});
