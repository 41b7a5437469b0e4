import type { Glyph } from 'opentype.js';
import { type Coverage, coverageOf, STEPS } from './glyph-coverage.ts';

/** A sheet of paper that is drawn on in inks. A pixel is 0 where it is paper, else a step of one of the inks. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
}

/** Fills a rectangle, which may begin and end within pixels. */
export function fillBar(
  sheet: Sheet,
  [x0, y0, x1, y1]: readonly [number, number, number, number],
  ink: number,
): void {
  const share = (at: number, from: number, to: number) => Math.min(at + 1, to) - Math.max(at, from);
  for (let y = Math.floor(y0); y < y1; y++)
    for (let x = Math.floor(x0); x < x1; x++) {
      const covered = share(x, x0, x1) * share(y, y0, y1);
      put(sheet, y * sheet.width + x, Math.round(covered * STEPS), ink);
    }
}

/** Glyphs stand at eighths of a pixel, so that each is worked out only so many times. */
const PLACES = 8;

/** How many glyphs are remembered, some kilobytes each. */
const REMEMBERED = 4_000;

const known = new Map<Glyph, Map<string, Coverage>>();
let count = 0;

/** Draws a glyph of a size with its origin at (x, y). */
export function drawGlyph(
  sheet: Sheet,
  glyph: Glyph,
  { x, y, size, ink }: { x: number; y: number; size: number; ink: number },
): void {
  const [right, down] = [Math.round(x * PLACES), Math.round(y * PLACES)];
  const [column, row] = [Math.floor(right / PLACES), Math.floor(down / PLACES)];
  const { left, top, width, height, steps } = coverageAt(
    glyph,
    size,
    right - column * PLACES,
    down - row * PLACES,
  );
  const [first, last] = [Math.max(0, -column - left), Math.min(width, sheet.width - column - left)];
  for (let line = 0; line < height; line++) {
    const to = (row + top + line) * sheet.width + column + left;
    for (let index = first; index < last; index++) {
      const step = steps[line * width + index] ?? 0;
      if (step > 0) put(sheet, to + index, step, ink);
    }
  }
}

function coverageAt(glyph: Glyph, size: number, right: number, down: number): Coverage {
  if (count >= REMEMBERED) {
    known.clear();
    count = 0;
  }
  const places = known.get(glyph) ?? new Map<string, Coverage>();
  known.set(glyph, places);
  const key = `${size} ${right} ${down}`;
  const found = places.get(key);
  if (found) return found;
  const coverage = coverageOf(glyph, size, right / PLACES, down / PLACES);
  places.set(key, coverage);
  count++;
  return coverage;
}

/** What two pieces cover of a pixel adds up; of two inks the later one is seen. */
function put({ pixels }: Sheet, at: number, step: number, ink: number): void {
  const there = (pixels[at] ?? 0) - ink * STEPS;
  pixels[at] = ink * STEPS + Math.min(STEPS, there > 0 && there <= STEPS ? there + step : step);
}
