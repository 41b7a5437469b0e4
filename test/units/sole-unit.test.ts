import { expect, test } from 'vitest';
import {
  baseSlope,
  guessUnit,
  isTurned,
  soleUnit,
  toBaseUnit,
  unitBeside,
} from '../../src/units/unit.ts';

test.each([
  ['Nm', 'N·m'],
  ['KG', 'kg'],
  ['Mm', 'mm'],
  ['lbs', 'lb'],
])('%s can mean %s only, so that it may be put right unasked', (typed, meant) => {
  expect(soleUnit(typed)).toBe(meant);
});

test.each(['min', 'mil', "'", 'dB', 'C', 'F', 'ft-lb', 'in-lb', 'ftlb'])(
  '%s has another meaning for some people, so nobody puts it right unasked',
  (typed) => {
    expect(soleUnit(typed)).toBeUndefined();
    expect(guessUnit(typed) ?? guessUnit(typed, 'angle')).toBeDefined();
  },
);

test('capitals are put right, and what is no unit at all is left alone', () => {
  expect(soleUnit('Min')).toBe('min');
  expect(soleUnit('smoot')).toBeUndefined();
});

test('capitals are looked over within the quantity only', () => {
  expect(guessUnit('KG', 'mass')).toBe('kg');
  expect(guessUnit('KG', 'length')).toBeUndefined();
});

test('the unit of the other system is that of the country, and some units have none', () => {
  expect(unitBeside('L', 'imperial')).toBe('gal(UK)');
  expect(unitBeside('L', 'us')).toBe('gal(US)');
  expect(unitBeside('V', 'us')).toBeUndefined();
  expect(unitBeside('V', 'imperial')).toBeUndefined();
});

test('a step is worth as much as the curve is steep there, for miles to the gallon too', () => {
  for (const at of [12, 30, 55]) {
    const step = 1e-4;
    const slope =
      (toBaseUnit(at + step, 'mpg(UK)') - toBaseUnit(at - step, 'mpg(UK)')) / (2 * step);
    expect(baseSlope('mpg(UK)', at) / slope).toBeCloseTo(1, 6);
  }
  expect(baseSlope('°F', 100)).toBeCloseTo(5 / 9, 12);
  expect(isTurned('mpg(UK)', 'L/100km')).toBe(true);
  expect(isTurned('mpg(UK)', 'mpg(US)')).toBe(false);
  expect(isTurned('km', 'mi')).toBe(false);
});
