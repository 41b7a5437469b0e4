import { describe, expect, test } from 'vitest';
import {
  readNumber,
  readQuantity,
  showNumber,
  showQuantity,
  withUnit,
} from '../../src/units/quantity.ts';

describe('readQuantity', () => {
  test('keeps the decimals it was written with, zeros at the end too', () => {
    expect(readQuantity('640 kg')).toEqual({ value: 640, unit: 'kg', decimals: 0 });
    expect(readQuantity('0.70 mm')).toEqual({ value: 0.7, unit: 'mm', decimals: 2 });
    expect(readQuantity('12%')).toEqual({ value: 12, unit: '%', decimals: 0 });
  });

  test('reads both minus signs', () => {
    expect(readQuantity('-0.02 mm')).toEqual({ value: -0.02, unit: 'mm', decimals: 2 });
    expect(readQuantity('−0.02 mm')).toEqual({ value: -0.02, unit: 'mm', decimals: 2 });
  });

  test('refuses a number without a unit', () => {
    expect(readQuantity('640')).toEqual({
      wrong: 'has no unit',
      fix: 'write the unit after it, like "640 mm"',
    });
  });

  test('refuses a misspelt unit and says what to write', () => {
    expect(readQuantity('90 Nm')).toEqual({
      wrong: 'has an unknown unit "Nm"',
      fix: 'write "90 N·m"',
      mend: '90 N·m',
    });
    expect(readQuantity('5 smoot')).toEqual({
      wrong: 'has an unknown unit "smoot"',
      fix: undefined,
    });
  });

  test('refuses a decimal comma and says what to write', () => {
    expect(readQuantity('0,7 mm')).toEqual({
      wrong: 'is not a number with a unit',
      fix: 'write "0.7 mm"',
    });
  });

  test.each([
    ['−12,75 mm', 'write "−12.75 mm"'],
    ['0,7mm', 'write "0.7mm"'],
    ['0,7 Nm', 'write "0.7 N·m"'],
    ['0,7', 'write the unit after it, like "0.7 mm"'],
    ['about 0,7 mm', undefined],
    ['0,7 mm or so', undefined],
    ['half a turn', undefined],
  ])('says of %s what to write, as far as it can tell', (text, fix) => {
    expect(readQuantity(text)).toEqual({ wrong: 'is not a number with a unit', fix });
  });
});

test('readNumber takes plain decimals only', () => {
  expect(readNumber('−0.5')).toBe(-0.5);
  expect(readNumber('1e3')).toBeUndefined();
  expect(readNumber('.5')).toBeUndefined();
  expect(readNumber('1,5')).toBeUndefined();
});

test('showNumber keeps fixed decimals, groups as the language does and never says minus nothing', () => {
  expect(showNumber(1234.5, 2, 'en-GB')).toBe('1,234.50');
  expect(showNumber(1234.5, 2, 'de')).toBe('1.234,50');
  expect(showNumber(-0.02, 2, 'en-GB')).toBe('−0.02');
  expect(showNumber(-0.001, 2, 'en-GB')).toBe('0.00');
  expect(showNumber(340, -1, 'en-GB')).toBe('340');
});

test('showQuantity keeps number and unit on one line, a degree close by and a count bare', () => {
  expect(showQuantity(640, 'kg', 0, 'en-GB')).toBe('640\u00a0kg');
  expect(showQuantity(12, '%', 0, 'en-GB')).toBe('12\u00a0%');
  expect(showQuantity(1.5, '°', 1, 'en-GB')).toBe('1.5°');
  expect(showQuantity(18, '°C', 0, 'en-GB')).toBe('18\u00a0°C');
  expect(showQuantity(7, 'count', 0, 'en-GB')).toBe('7');
});

test('a plain ratio and a count show no unit', () => {
  expect(withUnit('1.25', '1')).toBe('1.25');
  expect(withUnit('7', 'count')).toBe('7');
  expect(withUnit('7', 'mm')).toBe('7\u00a0mm');
});
