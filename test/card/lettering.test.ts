import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { loadLettering } from '../../src/card/lettering.ts';
import { node, writeSvg } from '../../src/draw/svg.ts';

const lettering = await loadLettering();
const style = { size: 40, fill: '#000' };
const outline = (text: string) => String(lettering.line(text, 0, 40, style).attributes.d);

/** The columns, left and right, between which a line has ink on white. */
async function extent(text: string, x: number, end = false): Promise<[number, number]> {
  const drawing = node(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', width: 900, height: 60 },
    node('rect', { width: 900, height: 60, fill: '#fff' }),
    lettering.line(text, x, 42, { ...style, end }),
  );
  const { data, info } = await sharp(Buffer.from(writeSvg(drawing)))
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const columns = [...data.keys()]
    .filter((at) => (data[at] ?? 255) < 128)
    .map((at) => at % info.width);
  return [Math.min(...columns), Math.max(...columns)];
}

describe('a line of lettering', () => {
  test('begins where it is told, or ends there', async () => {
    const width = lettering.width('HMH', 40);
    const [from, to] = await extent('HMH', 100);
    expect(from).toBeGreaterThanOrEqual(100);
    expect(to).toBeLessThanOrEqual(100 + width);
    const [left, right] = await extent('HMH', 800, true);
    expect(left).toBeGreaterThanOrEqual(Math.floor(800 - width));
    expect(right).toBeLessThanOrEqual(800);
    expect(right - left).toBeCloseTo(to - from, -0.5);
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
      expect(outline(letter), letter).not.toBe('');
      expect(outline(letter), letter).not.toBe(box);
    }
  });

  test('says what it has no outline of: ohms, a Greek micro, spaces that do not break', () => {
    expect(outline('20 MΩ')).toBe(outline('20 Mohm'));
    expect(outline('5 μm')).toBe(outline('5 µm'));
    expect(outline('1\u202f000\u00a0kg')).toBe(outline('1 000 kg'));
  });

  test('keeps its place where letters of two files meet', async () => {
    const whole = lettering.width('Škoda', 40);
    expect(whole).toBeCloseTo(lettering.width('Š', 40) + lettering.width('koda', 40), 9);
    const [from, to] = await extent('ŠkodaH', 10);
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
