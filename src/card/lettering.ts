import { loadTypeface, type PlacedGlyph, type Shaped, type Weight } from './typeface.ts';

/** Text in the site's own lettering, so that a card looks the same on any machine, whatever typefaces it has. */
export interface Lettering {
  /** Changes when the lettering looks different. */
  readonly version: string;
  /** Width of a text in pixels. */
  width(text: string, size: number, weight?: Weight): number;
  /** Breaks a text into at most `most` lines that fit a width; the last one is cut with an ellipsis. */
  wrap(text: string, width: number, size: number, most: number, weight?: Weight): string[];
  /** The glyphs of a text, in shares of its size. */
  glyphs(text: string, weight?: Weight): readonly PlacedGlyph[];
}

/** What stands for a character that the lettering has no outline of. */
const SPOKEN: Readonly<Record<string, string>> = {
  ...{ '\u00a0': ' ', '\u202f': ' ', '\u2009': ' ' },
  ...{ Ω: 'ohm', Δ: 'delta ', μ: 'µ' },
};

const UNSPOKEN = new RegExp(`[${Object.keys(SPOKEN).join('')}]`, 'g');

export async function loadLettering(): Promise<Lettering> {
  const typeface = await loadTypeface();
  const wordsOf = (text: string, weight: Weight): Shaped[] =>
    text
      .replace(UNSPOKEN, (letter) => SPOKEN[letter] ?? letter)
      .split(' ')
      .map((word) => typeface.word(word, weight));
  // The typeface kerns nothing with a space.
  const gap = (weight: Weight) => typeface.word(' ', weight).advance;
  const width = (text: string, size: number, weight: Weight = 'regular') => {
    const words = wordsOf(text, weight);
    return words.reduce((sum, word) => sum + word.advance, (words.length - 1) * gap(weight)) * size;
  };
  const cut = (text: string, most: number, size: number, weight?: Weight) => {
    let kept = [...text.replace(/[,;:.]$/, '')];
    while (kept.length > 1 && width(`${kept.join('')} …`, size, weight) > most)
      kept = kept.slice(0, -1);
    return `${kept.join('').trimEnd()} …`;
  };

  return {
    version: typeface.version,
    width,
    glyphs(text, weight = 'regular') {
      let at = 0;
      return wordsOf(text, weight).flatMap((word) => {
        const start = at;
        at += word.advance + gap(weight);
        return word.glyphs.map(({ glyph, x }) => ({ glyph, x: start + x }));
      });
    },
    wrap(text, most, size, lines, weight) {
      const fitted: string[] = [];
      let words = text.split(/\s+/);
      while (words.length > 0 && fitted.length < lines) {
        let count = 1;
        let line = words[0] ?? '';
        while (count < words.length) {
          const longer = `${line} ${words[count]}`;
          if (width(longer, size, weight) > most) break;
          line = longer;
          count++;
        }
        fitted.push(line);
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
