import { expect, test } from 'vitest';
import { originLines } from '../../src/parts/origin-lines.ts';
import { originsOn } from '../../src/parts/origins.ts';
import { say } from '../../src/words/said.ts';
import { wordsOf } from '../../src/words/words.ts';
import { workshopOn } from './workshop.ts';

const words = wordsOf('en');

test('pieces fitted or in hand count by their source; those wanted, ordered or for sale do not', () => {
  const { pieces } = originsOn(workshopOn('2025-06-30'));
  expect(pieces.groups.map(({ name, figure }) => [name, figure.value])).toEqual([
    ['The press', 1],
    ['A second press', 2],
    ['Bought', 1],
    ['Made', 1],
  ]);
  expect(say(pieces.total.how, words)).toBe('pieces of 4 parts, fitted or in hand');
});

test('what is for sale counted until the day it was offered', () => {
  const [, donor] = originsOn(workshopOn('2025-04-19')).pieces.groups;
  expect(donor?.figure.value).toBe(3);
});

test('masses are added in kilograms, each as often as there are pieces, and those without one are named', () => {
  const { mass } = originsOn(workshopOn('2025-06-30'));
  expect(mass.groups.map(({ figure }) => figure.value)).toEqual([40, 15, 0, 0]);
  expect(mass.total.value).toBe(55);
  expect(say(mass.total.how, words)).toBe(
    'sum of 2 parts with a mass, times their pieces; 2 without one left out',
  );
  expect(mass.total.rows.map(({ what }) => what)).toEqual(['table', 'drum × 2']);
});

test('lines put the shares of a source side by side, money of the cost sheet among them', () => {
  const lines = originLines(originsOn(workshopOn('2025-06-30')), words);
  const shares = lines.map(({ key, pieces, mass, cost }) => [
    key,
    pieces?.share,
    mass?.share,
    cost?.share,
  ]);
  expect(shares).toEqual([
    ['base', 0.2, 40 / 55, undefined],
    ['donor', 0.4, 15 / 55, 1],
    ['new', 0.2, 0, undefined],
    ['made', 0.2, 0, undefined],
  ]);
});
