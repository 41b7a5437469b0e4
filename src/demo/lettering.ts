import { GLYPHS, type Glyph } from './glyphs.ts';
import { tint } from './ink.ts';
import type { Point } from './shape.ts';

/** Gap between two letters, in tenths of the letter height. */
const GAP = 2.3;

export interface LetteringOptions {
  /** Height of a capital in pixels. */
  readonly size?: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly colour?: string;
  /** Degrees, clockwise, about the anchor. */
  readonly turn?: number;
  /** Paper colour behind the strokes, so that lines underneath give way; `none` leaves it out. */
  readonly halo?: string;
}

/** Lettering in single strokes on the baseline through `at`. */
export function lettering(text: string, at: Point, options: LetteringOptions = {}): string {
  const { size = 36, anchor = 'start', colour = tint.ink, turn = 0, halo = tint.paper } = options;
  const scale = size / 10;
  const shift = { start: 0, middle: -0.5, end: -1 }[anchor] * letteringWidth(text, size);
  const strokes = placeGlyphs(text);
  const behind = halo === 'none' ? '' : `<g stroke="${halo}" stroke-width="4">${strokes}</g>`;
  return (
    `<g transform="translate(${at.join(' ')}) rotate(${turn}) translate(${shift} ${-size}) scale(${scale})" ` +
    `fill="none" class="letters">${behind}<g stroke="${colour}" stroke-width="1.15">${strokes}</g></g>`
  );
}

/** How wide a line of lettering comes out, in pixels. */
export function letteringWidth(text: string, size = 36): number {
  const tenths = [...text].reduce((sum, sign) => sum + glyph(sign)[0] + GAP, -GAP);
  return (tenths * size) / 10;
}

function placeGlyphs(text: string): string {
  let x = 0;
  let marks = '';
  for (const sign of text) {
    const [width, strokes] = glyph(sign);
    if (strokes !== '') marks += `<path d="${strokes}" transform="translate(${x} 0)"/>`;
    x += width + GAP;
  }
  return marks;
}

function glyph(sign: string): Glyph {
  const found = GLYPHS[sign];
  if (!found) throw new Error(`glyphs.ts has no letter "${sign}"`);
  return found;
}
