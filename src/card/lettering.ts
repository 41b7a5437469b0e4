import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import opentype, { type Font } from 'opentype.js';
import { node, type SvgNode } from '../draw/svg.ts';

/** Text as outlines, so that a card looks the same on any machine, whatever typefaces it has. */
export interface Lettering {
  /** Width of a text in pixels. */
  width(text: string, size: number, weight?: Weight): number;
  /** A line of text with its baseline at y. */
  line(text: string, x: number, y: number, style: LineStyle): SvgNode;
  /** Breaks a text into at most `most` lines that fit a width; the last one is cut with an ellipsis. */
  wrap(text: string, width: number, size: number, most: number, weight?: Weight): string[];
}

export type Weight = 'regular' | 'bold';

/** Size in pixels, weight, colour, and which end of the text x is. */
export interface LineStyle {
  readonly size: number;
  readonly fill: string;
  readonly weight?: Weight;
  readonly end?: boolean;
}

const FILES: Readonly<Record<Weight, string>> = {
  regular: '@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-400-normal.woff',
  bold: '@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-latin-600-normal.woff',
};

/** Loads the site's own lettering (Barlow Semi Condensed, SIL Open Font Licence). */
export async function loadLettering(): Promise<Lettering> {
  const [regular, bold] = await Promise.all([loadFont(FILES.regular), loadFont(FILES.bold)]);
  const fontOf = (weight: Weight = 'regular') => (weight === 'bold' ? bold : regular);
  const width = (text: string, size: number, weight?: Weight) =>
    fontOf(weight).getAdvanceWidth(text, size);

  return {
    width,
    line(text, x, y, { size, fill, weight, end }) {
      const start = end ? x - width(text, size, weight) : x;
      return node('path', { d: fontOf(weight).getPath(text, start, y, size).toPathData(1), fill });
    },
    wrap(text, most, size, lines, weight) {
      const fitted: string[] = [];
      let words = text.split(/\s+/);
      while (words.length > 0 && fitted.length < lines) {
        let count = words.length;
        while (count > 1 && width(words.slice(0, count).join(' '), size, weight) > most) count--;
        fitted.push(words.slice(0, count).join(' '));
        words = words.slice(count);
      }
      const last = fitted.at(-1);
      if (words.length > 0 && last !== undefined)
        fitted[fitted.length - 1] = `${last.replace(/[,;:.]$/, '')} …`;
      return fitted;
    },
  };
}

async function loadFont(file: string): Promise<Font> {
  const bytes = await readFile(createRequire(import.meta.url).resolve(file));
  return opentype.parse(
    bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer,
  );
}
