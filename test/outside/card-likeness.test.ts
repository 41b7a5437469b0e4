import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import opentype, { type Font } from 'opentype.js';
import sharp from 'sharp';
import { ssim } from 'ssim.js';
import { expect, test } from 'vitest';
import { CARD, type Card, type CardDrawing, COLOURS, drawCard } from '../../src/card/draw-card.ts';
import { writeIndexedPng } from '../../src/card/indexed-png.ts';
import { loadLettering } from '../../src/card/lettering.ts';
import { PALETTE, paintCard } from '../../src/card/paint-card.ts';

const lettering = await loadLettering();
const fonts = { regular: await font(400), bold: await font(600) };

async function font(weight: number): Promise<Font> {
  const file = `@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-${weight}-normal.woff`;
  const bytes = await readFile(createRequire(import.meta.url).resolve(file));
  return opentype.parse(Uint8Array.from(bytes).buffer);
}

/** The same drawing as librsvg draws it, with the outlines that opentype.js has of its letters. */
function svgOf({ bars, texts }: CardDrawing): Buffer {
  const [ink = '', soft = ''] = COLOURS.inks;
  const shapes = [
    ...bars.map(([x0, y0, x1, y1]) => `<path d="M${x0} ${y0}H${x1}V${y1}H${x0}Z" fill="${ink}"/>`),
    ...texts.map((line) => {
      const { commands } = fonts[line.weight].getPath(line.text, line.x, line.y, line.size);
      const d = commands.map((one) => {
        if (one.type === 'Z') return 'Z';
        return one.type === 'Q'
          ? `Q${one.x1} ${one.y1} ${one.x} ${one.y}`
          : `${one.type}${one.x} ${one.y}`;
      });
      return `<path d="${d.join('')}" fill="${line.ink === 0 ? ink : soft}"/>`;
    }),
  ];
  const { width, height } = CARD;
  const paper = `<rect width="${width}" height="${height}" fill="${COLOURS.paper}"/>`;
  return Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${paper}${shapes.join('')}</svg>`,
  );
}

async function likeness(card: Card, drawn: Card): Promise<{ ssim: number; difference: number }> {
  const ours = writeIndexedPng(paintCard(drawCard(card, lettering), lettering), PALETTE);
  const [one, other] = await Promise.all(
    [ours, svgOf(drawCard(drawn, lettering))].map(
      async (picture) => new Uint8ClampedArray(await sharp(picture).ensureAlpha().raw().toBuffer()),
    ),
  );
  if (one === undefined || other === undefined) throw new Error('nothing to compare');
  const most = one.reduce((sum, value, at) => Math.max(sum, Math.abs(value - (other[at] ?? 0))), 0);
  const { mssim } = ssim({ data: one, ...CARD }, { data: other, ...CARD });
  return { ssim: mssim, difference: most };
}

const spec: Card = {
  over: '1958 Hallin 3',
  title: 'Clearance of the fly wheel, first and last',
  value: '20.53 ± 1.24 mm',
  lines: ['before 4.01 ± 1.24 mm, after 20.53 ± 1.24 mm: changed', 'meets its limits, & more'],
  block: [
    ['Owner', 'Ines Marlow'],
    ['Document', 'Measured spec'],
    ['Date', '1 Mar 2025'],
    ['Uncertainty', 'U at 95 %'],
  ],
};
const { value: _, ...entry } = {
  ...spec,
  title: 'Two wedges, a gib and a whole afternoon of scraping',
};

test.each([
  ['a spec', spec],
  ['an entry', entry],
])('the card of %s looks as another renderer draws it', async (_, card) => {
  const { ssim: like, difference } = await likeness(card, card);
  expect(like).toBeGreaterThan(0.9995);
  expect(difference).toBeLessThan(64);
});

test('a difference of one digit is seen', async () => {
  const { ssim: like, difference } = await likeness({ ...spec, value: '20.58 ± 1.24 mm' }, spec);
  expect(like).toBeLessThan(0.9995);
  expect(difference).toBeGreaterThan(128);
});
