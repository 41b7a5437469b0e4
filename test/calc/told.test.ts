import { describe, expect, it } from 'vitest';
import type { Calculation } from '../../src/calc/calculation.ts';
import { cgAlong } from '../../src/calc/cg-along.ts';
import { library } from '../../src/calc/library.ts';
import { placeMean } from '../../src/calc/place-mean.ts';
import { squarenessAngle } from '../../src/calc/squareness-angle.ts';
import { calculationTexts, inputText } from '../../src/calc/told.ts';
import type { CalculationTexts } from '../../src/words/calc-texts.ts';
import { languagesWithWords, wordsOf } from '../../src/words/words.ts';

/** What must be the same in every language: which inputs are told of, and how much is said. */
function shapeOf({ inputs, assumptions, caution, requires = [] }: CalculationTexts): object {
  return {
    inputs: Object.keys(inputs).sort(),
    assumptions: assumptions.length,
    caution: caution !== undefined,
    requires: requires.length,
  };
}

/** Numbers in a text, whatever their decimal sign; sorted, since another language orders its words otherwise. */
function numbersOf(text: string): string[] {
  return (text.match(/\d+(?:[.,]\d+)*/g) ?? []).map((number) => number.replace(',', '.')).sort();
}

const calculations = [...library.values()].map((one): [string, Calculation] => [one.name, one]);
const english = wordsOf('en');

describe.each(languagesWithWords.filter((tag) => tag !== 'en'))('calculations in %s', (tag) => {
  const words = wordsOf(tag);

  it('are those of the library and no other', () => {
    expect(Object.keys(words.calc).sort()).toEqual([...library.keys()].sort());
  });

  it.each(calculations)('%s says as much as in English, and leaves nothing empty', (_, one) => {
    const texts = calculationTexts(one, words);
    expect(shapeOf(texts)).toEqual(shapeOf(calculationTexts(one, english)));
    const { title, inputs, assumptions, caution = '–', requires = [] } = texts;
    for (const text of [title, ...Object.values(inputs), ...assumptions, caution, ...requires])
      expect(text.trim()).not.toBe('');
  });

  it.each(calculations)('%s names the same numbers in its assumptions', (_, one) => {
    const own = calculationTexts(one, english).assumptions;
    const told = calculationTexts(one, words).assumptions;
    expect(told.map(numbersOf)).toEqual(own.map(numbersOf));
  });
});

describe('calculationTexts', () => {
  it('gives the calculation’s own English where the words have none', () => {
    expect(calculationTexts(squarenessAngle, english)).toEqual({
      title: squarenessAngle.title,
      inputs: {
        a: 'long side',
        b: 'short side',
        d_1: 'first diagonal',
        d_2: 'second diagonal',
      },
      assumptions: squarenessAngle.assumptions,
      caution: undefined,
      requires: squarenessAngle.requires?.map(({ otherwise }) => otherwise),
    });
  });

  it('gives the words of a language that has them', () => {
    const { title, inputs } = calculationTexts(cgAlong, wordsOf('de-CH'));
    expect([title, inputs.L]).toEqual(['Schwerpunkt hinter der Vorderachse', 'Radstand']);
  });
});

describe('inputText', () => {
  it('tells of every value of a list by what the list holds', () => {
    expect(inputText(placeMean, 'x2', english)).toBe('reading at a place');
    expect(inputText(placeMean, 'x2', wordsOf('de'))).toBe('Messwert an einer Stelle');
    expect(inputText(cgAlong, 'Wf', english)).toBe('front axle load');
  });
});
