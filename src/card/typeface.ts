import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import opentype, { type Font, type Glyph } from 'opentype.js';

export type Weight = 'regular' | 'bold';

const WEIGHTS: Readonly<Record<Weight, number>> = { regular: 400, bold: 600 };

/** A glyph in its place, in shares of the size of the lettering. */
export interface PlacedGlyph {
  readonly glyph: Glyph;
  readonly x: number;
}

/** A text as its glyphs, for lettering of the size 1. */
export interface Shaped {
  readonly glyphs: readonly PlacedGlyph[];
  readonly advance: number;
}

/** The site's own typeface as its files have it. */
export interface Typeface {
  /** Hash of its files: what is drawn with it is the same as long as this is. */
  readonly version: string;
  /** A text without spaces, with its kerning and ligatures. */
  word(text: string, weight: Weight): Shaped;
}

/** How many words are remembered; a site says the same ones on most of its cards. */
const REMEMBERED = 20_000;

/** Loads Barlow Semi Condensed (SIL Open Font Licence). */
export async function loadTypeface(): Promise<Typeface> {
  const files = { regular: await readFonts('regular'), bold: await readFonts('bold') };
  const hash = createHash('sha256');
  for (const bytes of [...files.regular, ...files.bold]) hash.update(bytes);
  const fonts = { regular: files.regular.map(parse), bold: files.bold.map(parse) };
  const known = { regular: new Map<string, Shaped>(), bold: new Map<string, Shaped>() };
  return {
    version: hash.digest('hex'),
    word(text, weight) {
      const words = known[weight];
      const found = words.get(text);
      if (found) return found;
      if (words.size >= REMEMBERED) words.clear();
      const shaped = shape(text, fonts[weight]);
      words.set(text, shaped);
      return shaped;
    },
  };
}

function shape(text: string, fonts: readonly Font[]): Shaped {
  const glyphs: PlacedGlyph[] = [];
  let advance = 0;
  for (const run of runs(text, fonts)) {
    const start = advance;
    advance += run.font.forEachGlyph(run.text, 0, 0, 1, undefined, (glyph, x) => {
      glyphs.push({ glyph, x: start + x });
    });
  }
  return { glyphs, advance };
}

/** A text in pieces, each in the first file of the typeface that has its letters. */
function runs(text: string, fonts: readonly Font[]): { text: string; font: Font }[] {
  const found: { text: string; font: Font }[] = [];
  for (const letter of text) {
    const font = fonts.find((one) => one.charToGlyphIndex(letter) > 0) ?? (fonts[0] as Font);
    const last = found.at(-1);
    if (last?.font === font) last.text += letter;
    else found.push({ text: letter, font });
  }
  return found;
}

/** The files of one weight: western letters, and the others that are written in Latin script. */
function readFonts(weight: Weight): Promise<Uint8Array[]> {
  const place = '@fontsource/barlow-semi-condensed/files/barlow-semi-condensed';
  const { resolve } = createRequire(import.meta.url);
  const files = ['latin', 'latin-ext'].map(
    (part) => `${place}-${part}-${WEIGHTS[weight]}-normal.woff`,
  );
  return Promise.all(files.map((file) => readFile(resolve(file))));
}

function parse(bytes: Uint8Array): Font {
  const { buffer, byteOffset, byteLength } = bytes;
  return opentype.parse(buffer.slice(byteOffset, byteOffset + byteLength) as ArrayBuffer);
}
