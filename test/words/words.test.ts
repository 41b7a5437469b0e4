import { describe, expect, it } from 'vitest';
import { directionOf } from '../../src/words/direction.ts';
import { ownLanguage } from '../../src/words/own-language.ts';
import { piecesOf } from '../../src/words/pieces.ts';
import { languagesWithWords, tongueOf, wordsOf } from '../../src/words/words.ts';

/** What languages are compared by: all but the calculations, whose English stands in `src/calc` (test/calc/told.test.ts compares those). */
function compared(tag: string): [string, string | number][] {
  const { calc, ...rest } = wordsOf(tag);
  return leaves(rest);
}

/** Every text of a language by its path; a function stands by the number of its arguments. */
function leaves(part: unknown, path = ''): [string, string | number][] {
  if (typeof part === 'string') return [[path, part]];
  if (typeof part === 'function') return [[path, part.length]];
  return Object.entries(part as object).flatMap(([key, inner]) => leaves(inner, `${path}.${key}`));
}

describe('words', () => {
  const english = compared('en');
  it.each(languagesWithWords)('%s has every key of English and no other', (tag) => {
    expect(compared(tag).map(([path]) => path)).toEqual(english.map(([path]) => path));
  });

  it.each(languagesWithWords)('%s leaves no text empty and keeps the places of elements', (tag) => {
    const slots = (text: string | number) =>
      piecesOf(String(text))
        .flatMap((piece) => ('slot' in piece ? [piece.slot] : []))
        .sort();
    const by = new Map(english);
    for (const [path, text] of compared(tag)) {
      expect(text, path).not.toBe('');
      if (typeof text === 'string') expect(slots(text), path).toEqual(slots(by.get(path) ?? ''));
    }
  });

  it('goes by the first part of a tag, and speaks English where it has no words', () => {
    expect(tongueOf('de-CH')).toEqual({ words: wordsOf('de'), tag: 'de-CH' });
    expect(tongueOf('fr-FR')).toEqual({ words: wordsOf('en'), tag: 'en' });
  });

  it('puts every word of the pseudo-language in brackets', () => {
    const { general } = wordsOf('en-XA');
    expect([general.part, general.rows(2)]).toEqual(['⟦Part⟧', '⟦2 rows⟧']);
  });

  it('knows which languages are written from the right', () => {
    expect(['ar', 'he-IL', 'fa', 'az-Arab', 'en', 'de-AT'].map(directionOf)).toEqual([
      'rtl',
      'rtl',
      'rtl',
      'rtl',
      'ltr',
      'ltr',
    ]);
  });

  it('marks only text in another language than its page', () => {
    expect(ownLanguage('en-GB', 'en')).toEqual({});
    expect(ownLanguage('en-GB', 'de')).toEqual({ lang: 'en-GB' });
    expect(ownLanguage('ar', 'en')).toEqual({ lang: 'ar', dir: 'rtl' });
  });
});
