import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import opentype, { type Font, type PathCommand } from 'opentype.js';
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

const WEIGHTS: Readonly<Record<Weight, number>> = { regular: 400, bold: 600 };

/** What stands for a character that the lettering has no outline of. */
const SPOKEN: Readonly<Record<string, string>> = {
  ...{ '\u00a0': ' ', '\u202f': ' ', '\u2009': ' ' },
  ...{ Ω: 'ohm', Δ: 'delta ', μ: 'µ' },
};

/** Loads the site's own lettering (Barlow Semi Condensed, SIL Open Font Licence). */
export async function loadLettering(): Promise<Lettering> {
  const fonts = { regular: await loadFonts('regular'), bold: await loadFonts('bold') };
  const runsOf = (text: string, weight: Weight = 'regular') => runs(text, fonts[weight]);
  const width = (text: string, size: number, weight?: Weight) =>
    runsOf(text, weight).reduce((sum, run) => sum + run.font.getAdvanceWidth(run.text, size), 0);
  const cut = (text: string, most: number, size: number, weight?: Weight) => {
    let kept = [...text.replace(/[,;:.]$/, '')];
    while (kept.length > 1 && width(`${kept.join('')} …`, size, weight) > most)
      kept = kept.slice(0, -1);
    return `${kept.join('').trimEnd()} …`;
  };

  return {
    width,
    line(text, x, y, { size, fill, weight, end }) {
      let at = end ? x - width(text, size, weight) : x;
      let d = '';
      for (const run of runsOf(text, weight)) {
        d += pathData(run.font.getPath(run.text, at, y, size).commands);
        at += run.font.getAdvanceWidth(run.text, size);
      }
      return node('path', { d, fill });
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
      return fitted.map((line, index) =>
        width(line, size, weight) > most || (words.length > 0 && index === fitted.length - 1)
          ? cut(line, most, size, weight)
          : line,
      );
    },
  };
}

/** A text in pieces, each in the first file of the typeface that has its letters. */
function runs(text: string, fonts: readonly Font[]): { text: string; font: Font }[] {
  const found: { text: string; font: Font }[] = [];
  const spoken = [...text].map((letter) => SPOKEN[letter] ?? letter).join('');
  for (const letter of spoken) {
    const font = fonts.find((one) => one.charToGlyphIndex(letter) > 0) ?? (fonts[0] as Font);
    const last = found.at(-1);
    if (last?.font === font) last.text += letter;
    else found.push({ text: letter, font });
  }
  return found;
}

/** Outlines as path data with one decimal; the package's own writer turns some numbers into NaN (2.0.0). */
function pathData(commands: readonly PathCommand[]): string {
  const at = (...numbers: readonly number[]) =>
    numbers.map((number) => Math.round(number * 10) / 10).join(' ');
  return commands
    .map((command) => {
      if (command.type === 'M' || command.type === 'L')
        return command.type + at(command.x, command.y);
      if (command.type === 'Q') return `Q${at(command.x1, command.y1, command.x, command.y)}`;
      if (command.type === 'C')
        return `C${at(command.x1, command.y1, command.x2, command.y2, command.x, command.y)}`;
      return 'Z';
    })
    .join('');
}

/** The files of one weight: western letters, and the others that are written in Latin script. */
function loadFonts(weight: Weight): Promise<Font[]> {
  const place = '@fontsource/barlow-semi-condensed/files/barlow-semi-condensed';
  return Promise.all(
    ['latin', 'latin-ext'].map((part) =>
      loadFont(`${place}-${part}-${WEIGHTS[weight]}-normal.woff`),
    ),
  );
}

async function loadFont(file: string): Promise<Font> {
  const bytes = await readFile(createRequire(import.meta.url).resolve(file));
  return opentype.parse(
    bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer,
  );
}
