import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import opentype from 'opentype.js';
import { describe, expect, test } from 'vitest';
import { loadLettering } from '../../src/card/lettering.ts';
import { drawGlyph } from '../../src/card/sheet.ts';

const lettering = await loadLettering();

/** What a text looks like: the outlines of its glyphs, and where they stand. */
const outline = (text: string) =>
  JSON.stringify(lettering.glyphs(text).map(({ glyph, x }) => [glyph.path.commands, x]));

/** The columns, left and right, between which a line has ink on paper. */
function extent(text: string, x: number): [number, number] {
  const sheet = { width: 900, height: 60, pixels: new Uint8Array(900 * 60) };
  for (const { glyph, x: along } of lettering.glyphs(text))
    drawGlyph(sheet, glyph, { x: x + along * 40, y: 42, size: 40, ink: 0 });
  const columns = [...sheet.pixels.keys()]
    .filter((at) => (sheet.pixels[at] ?? 0) > 16)
    .map((at) => at % sheet.width);
  return [Math.min(...columns), Math.max(...columns)];
}

describe('a line of lettering', () => {
  test('begins where it is told', () => {
    const [from, to] = extent('HMH', 100);
    expect(from).toBeGreaterThanOrEqual(100);
    expect(from).toBeLessThan(105);
    expect(to).toBeLessThanOrEqual(100 + lettering.width('HMH', 40));
  });

  test.each(['latin', 'latin-ext'])('is set as the typeface says, in its file %s', async (part) => {
    const file = `@fontsource/barlow-semi-condensed/files/barlow-semi-condensed-${part}-400-normal.woff`;
    const bytes = await readFile(createRequire(import.meta.url).resolve(file));
    const font = opentype.parse(Uint8Array.from(bytes).buffer);
    const letters = Array.from({ length: 0x240 }, (_, code) => String.fromCodePoint(code + 33));
    const known = letters.filter((letter) => font.charToGlyphIndex(letter) > 0);
    expect(known.length).toBeGreaterThan(100);
    // Ligatures, kerning, and that none of it reaches over a space.
    const texts = [
      ...known.map((letter) => `${letter} ${letter}`),
      ...(part === 'latin' ? ['Two affixed fjords, To Väinö: AVATAR fly', ' T  V '] : []),
    ];
    for (const text of texts)
      expect(lettering.width(text, 40), text).toBeCloseTo(font.getAdvanceWidth(text, 40), 6);
  });

  test('is as wide as its letters together, in either weight', () => {
    expect(lettering.width('', 40)).toBe(0);
    expect(lettering.width('HH', 80)).toBeCloseTo(2 * lettering.width('HH', 40), 9);
    expect(lettering.width('HH', 40, 'bold')).not.toBe(lettering.width('HH', 40));
  });

  test('has an outline for every character of a measured value, and of names in Latin script', () => {
    // The box that stands for a missing outline is drawn for a character that nobody has.
    const box = outline('\u{10ffff}');
    const known = '0123456789.,±−+%/·²³°µ"\'()ÅäßéÆØčĐęłńőřŞşšťůűźžŵŷ…–’';
    expect(box.length).toBeGreaterThan(10);
    for (const letter of known) {
      expect(outline(letter).length, letter).toBeGreaterThan(40);
      expect(outline(letter), letter).not.toBe(box);
    }
  });

  test('says what it has no outline of: ohms, a Greek micro, spaces that do not break', () => {
    expect(outline('20 MΩ')).toBe(outline('20 Mohm'));
    expect(outline('5 μm')).toBe(outline('5 µm'));
    expect(outline('1\u202f000\u00a0kg')).toBe(outline('1 000 kg'));
  });

  test('keeps its place where letters of two files meet', () => {
    const whole = lettering.width('Škoda', 40);
    expect(whole).toBeCloseTo(lettering.width('Š', 40) + lettering.width('koda', 40), 9);
    const [from, to] = extent('ŠkodaH', 10);
    expect(to - from).toBeGreaterThan(whole);
  });
});

describe('wrap', () => {
  const wrap = (text: string, most: number, lines: number) => lettering.wrap(text, most, 40, lines);

  test('breaks between words, each line within the width', () => {
    const lines = wrap('the height of the centre of gravity', 260, 5);
    expect(lines.join(' ')).toBe('the height of the centre of gravity');
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(lettering.width(line, 40)).toBeLessThanOrEqual(260);
  });

  test('cuts what does not fit with an ellipsis, within the width too', () => {
    const lines = wrap('the height of the centre of gravity, empty', 260, 2);
    expect(lines).toHaveLength(2);
    expect(lines[1]).toMatch(/[^,] …$/);
    for (const line of lines) expect(lettering.width(line, 40)).toBeLessThanOrEqual(260);
    const [only = ''] = wrap('Donaudampfschifffahrt'.repeat(5), 260, 3);
    expect(only).toMatch(/^Donaudampf.* …$/);
    expect(lettering.width(only, 40)).toBeLessThanOrEqual(260);
  });

  test('leaves a text that fits as it is', () => {
    expect(wrap('short', 260, 1)).toEqual(['short']);
    expect(wrap('', 260, 1)).toEqual(['']);
  });
});
