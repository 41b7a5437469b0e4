import { type Bar, CARD, type CardDrawing, COLOURS } from './draw-card.ts';
import { STEPS } from './glyph-coverage.ts';
import type { Lettering } from './lettering.ts';
import { drawGlyph, fillBar, type Sheet } from './sheet.ts';

/** Sheets with nothing but their frames, of which there are few. */
const framed = new Map<string, Uint8Array>();

/** The one sheet that is drawn on: a new one for each card would cost more in memory to be cleared than the drawing. */
const scrap = new Uint8Array(CARD.width * CARD.height);

/** Puts a drawing on paper, all but its photo. What comes out stands until the next is painted. */
export function paintCard({ bars, texts }: CardDrawing, lettering: Lettering): Sheet {
  const sheet = { ...CARD, pixels: scrap };
  sheet.pixels.set(frameOf(bars));
  for (const { text, x, y, size, weight, ink } of texts)
    for (const { glyph, x: along } of lettering.glyphs(text, weight))
      drawGlyph(sheet, glyph, { x: x + along * size, y, size, ink });
  return sheet;
}

function frameOf(bars: readonly Bar[]): Uint8Array {
  const key = JSON.stringify(bars);
  const found = framed.get(key);
  if (found) return found;
  const sheet = { ...CARD, pixels: new Uint8Array(CARD.width * CARD.height) };
  for (const bar of bars) fillBar(sheet, bar, 0);
  framed.set(key, sheet.pixels);
  return sheet.pixels;
}

/** Colours of a sheet's pixels: three bytes each, paper first, then the steps of each ink. */
export const PALETTE = Uint8Array.from([
  ...rgb(COLOURS.paper),
  ...COLOURS.inks
    .flatMap((ink) =>
      Array.from({ length: STEPS }, (_, index) => between(COLOURS.paper, ink, (index + 1) / STEPS)),
    )
    .flat(),
]);

function between(paper: string, ink: string, share: number): number[] {
  const from = rgb(paper);
  return rgb(ink).map((value, index) => {
    const start = from[index] ?? 0;
    return Math.round(start + (value - start) * share);
  });
}

function rgb(colour: string): number[] {
  return [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
}
