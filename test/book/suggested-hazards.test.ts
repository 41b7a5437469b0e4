import { describe, expect, test } from 'vitest';
import { suggestedHazards } from '../../src/book/suggested-hazards.ts';

const kinds = (text: string, language = 'en-GB', notes: readonly string[] = []) =>
  suggestedHazards(text, notes, language).map(({ kind }) => kind);

describe('suggestedHazards', () => {
  test.each([
    ['The fuel tank was drained.', ['fuel']],
    ['We jacked up the rear and put it on stands.', ['lifting']],
    ['Welding the sill took two days.', ['welding']],
    ['The wheels were sand-blasted and sprayed.', ['blasting', 'spray']],
    ['New brake shoes, and the leaf springs out.', ['brakes', 'springs']],
    ['The pad may be asbestos.', ['asbestos']],
    ['Old lead paint under the green, and red lead below.', ['lead']],
    ['The motor runs on 400 V.', ['high-voltage']],
  ])('%s', (text, expected) => {
    expect(kinds(text)).toEqual(expected);
  });

  test.each([
    'A lead time of six weeks, and the leading edge of the wing.',
    'Holes lead to cracks; the earth lead and the plug leads were renewed.',
    'In spring we led with the forklift truck brochure.',
    'A brake light bulb, a breakdown, a blast of cold wind.',
    'He mainstreamed it; the weldment drawing is in the folder.',
    'Petrolhead and uplifting are words.',
  ])('is silent at: %s', (text) => {
    expect(kinds(text)).toEqual([]);
  });

  test.each([
    ['Die Schwelle wurde eingeschweißt.', ['welding']],
    ['Bremsbeläge mit Asbest, darunter Bleimennige.', ['brakes', 'asbestos', 'lead']],
  ])('German: %s', (text, expected) => {
    expect(kinds(text, 'de-DE')).toEqual(expected);
  });

  test.each(['Der Bleistift und die Bleibe.', 'Im Frühling federleicht; der Strahler bleibt an.'])(
    'German, silent at: %s',
    (text) => {
      expect(kinds(text, 'de')).toEqual([]);
    },
  );

  test('is content with a note that speaks of it, and with a language it has no words of', () => {
    expect(kinds('Welding the sill.', 'en', ['Sparks from welding near the tank'])).toEqual([]);
    expect(kinds('Welding the sill.', 'fr')).toEqual([]);
  });
});
