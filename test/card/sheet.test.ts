import { describe, expect, test } from 'vitest';
import { STEPS } from '../../src/card/glyph-coverage.ts';
import { drawGlyph, fillBar } from '../../src/card/sheet.ts';
import { loadTypeface } from '../../src/card/typeface.ts';

const typeface = await loadTypeface();
const blank = (width: number, height: number) => ({
  ...{ width, height },
  pixels: new Uint8Array(width * height),
});

describe('a bar', () => {
  test('covers what it covers of each pixel', () => {
    const sheet = blank(4, 3);
    fillBar(sheet, [0.5, 0.25, 3, 2], 0);
    const shares = [...sheet.pixels].map((step) => step / STEPS);
    expect(shares).toEqual([0.375, 0.75, 0.75, 0, 0.5, 1, 1, 0, 0, 0, 0, 0]);
  });

  test('adds up with another of its ink, and covers another ink', () => {
    const sheet = blank(3, 1);
    fillBar(sheet, [0, 0, 0.5, 1], 0);
    fillBar(sheet, [0.5, 0, 1, 1], 0);
    fillBar(sheet, [1, 0, 3, 1], 0);
    fillBar(sheet, [2, 0, 2.25, 1], 1);
    expect([...sheet.pixels]).toEqual([STEPS, STEPS, STEPS + STEPS / 4]);
  });
});

describe('a glyph', () => {
  const [placed] = typeface.word('H', 'bold').glyphs;
  if (placed === undefined) throw new Error('no such glyph');
  const at = (x: number, y = 40) => {
    const sheet = blank(60, 60);
    drawGlyph(sheet, placed.glyph, { x, y, size: 50, ink: 0 });
    return sheet.pixels;
  };
  const sum = (pixels: Uint8Array) => pixels.reduce((all, step) => all + step, 0);

  test('covers as much wherever it stands', () => {
    for (const x of [10.125, 10.5, 10.875, 11])
      expect(sum(at(x)) / sum(at(10))).toBeCloseTo(1, 1.9);
    expect(at(11).slice(1)).toEqual(at(10).slice(0, -1));
    expect(at(10, 41).slice(60)).toEqual(at(10, 40).slice(0, -60));
  });

  test('that does not fit is cut at the edges of the sheet', () => {
    const right = at(45);
    const left = at(-15);
    const columns = (pixels: Uint8Array) =>
      new Set([...pixels.keys()].filter((one) => (pixels[one] ?? 0) > 0).map((one) => one % 60));
    expect(Math.min(...columns(right))).toBeGreaterThan(40);
    expect(Math.max(...columns(left))).toBeLessThan(20);
  });
});
