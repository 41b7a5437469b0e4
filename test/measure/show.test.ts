import { describe, expect, test } from 'vitest';
import { roundTo, showDifference, showMeasured } from '../../src/measure/show.ts';
import { decimalsFor } from '../../src/measure/uncertainty.ts';

const british = { language: 'en-GB', otherUnits: 'imperial' } as const;
const shown = (value: number, U: number | undefined, unit = 'kg', decimals = 0) =>
  showMeasured({ value, U, unit, decimals }, british);
/** Spaces that hold number and unit together, made plain. */
const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');

test.each([
  [0.0123, 3],
  [0.0996, 2],
  [0.0994, 3],
  [1.0, 1],
  [2.36, 1],
  [9.96, 0],
  [12, 0],
  [99.4, 0],
  [99.6, -1],
  [340, -1],
])('decimalsFor(%d) shows its two significant digits with %i decimals', (size, decimals) => {
  expect(decimalsFor(size)).toBe(decimals);
});

test('roundTo rounds half away from zero, and to tens where decimals are negative', () => {
  expect(roundTo(691.25, 1)).toBe(691.3);
  expect(roundTo(-0.5, 0)).toBe(-1);
  expect(roundTo(1.005, 2)).toBe(1.01);
  expect(roundTo(695, -1)).toBe(700);
});

describe('showMeasured', () => {
  test('shows as many digits as two significant digits of U allow', () => {
    expect(plain(shown(691.25, 2.36).text)).toBe('691.3 ± 2.4 kg');
    expect(plain(shown(691.25, 12.3).text)).toBe('691 ± 12 kg');
    expect(plain(shown(694.25, 344).text)).toBe('690 ± 340 kg');
    expect(plain(shown(0.71234, 0.0123, 'mm').text)).toBe('0.712 ± 0.012 mm');
    expect(plain(shown(2, 0.0996, 'mm').text)).toBe('2.00 ± 0.10 mm');
  });

  test('keeps the decimals that a value without U was read with', () => {
    const { text, U } = shown(640.5, undefined, 'kg', 2);
    expect(plain(text)).toBe('640.50 kg');
    expect(U).toBeUndefined();
  });

  test('gives the value and U apart as well', () => {
    const { value, U } = shown(691.25, 2.36);
    expect([plain(value), U]).toEqual(['691.3 kg', '2.4']);
  });

  test('puts the other system beside, with no more digits than U is worth there', () => {
    // 691.25 kg are 1523.94… lb, and 2.36 kg are 5.2 lb: whole pounds.
    expect(plain(shown(691.25, 2.36).beside)).toBe('1,524 lb');
    // 0.712 34 mm are 0.028 045 in, and 0.0123 mm are 0.000 48 in.
    expect(plain(shown(0.71234, 0.0123, 'mm').beside)).toBe('0.0280 in');
    // 0.5 °C are 0.9 °F wide, so tenths are worth something.
    expect(plain(shown(18, 0.5, '°C').beside)).toBe('64.4 °F');
  });

  test('has nothing to put beside where both systems have the unit', () => {
    expect(shown(12.4, 0.1, 'V').beside).toBeUndefined();
  });

  test('counts fuel by the gallon of the reader', () => {
    const value = { value: 9.4, U: undefined, unit: 'L/100km', decimals: 1 };
    // 282.481/9.4 and 235.215/9.4; the last digit, 0.1, is worth 0.3 mpg there.
    expect(plain(showMeasured(value, british).beside)).toBe('30.1 mpg(UK)');
    expect(plain(showMeasured(value, { ...british, otherUnits: 'us' }).beside)).toBe(
      '25.0 mpg(US)',
    );
  });

  test('never shows minus nothing', () => {
    expect(plain(shown(-0.001, 0.12, 'mm').text)).toBe('0.00 ± 0.12 mm');
  });
});

describe('showDifference', () => {
  const difference = (value: number, U: number | undefined, unit = 'kg', decimals = 1) =>
    plain(showDifference({ value, U, unit, decimals }, 'en-GB'));

  test('always writes its sign, but none before nothing', () => {
    expect(difference(115.2, 3.3)).toBe('+115.2 ± 3.3 kg');
    expect(difference(-115.2, 3.3)).toBe('−115.2 ± 3.3 kg');
    expect(difference(0.01, undefined)).toBe('0.0 kg');
    expect(difference(0.2, undefined)).toBe('+0.2 kg');
  });

  test('of two temperatures in °C is in kelvin', () => {
    expect(difference(-4, 1.2, '°C')).toBe('−4.0 ± 1.2 K');
  });
});
