import { describe, expect, test } from 'vitest';
import {
  negate,
  readAmount,
  showMoney,
  sum,
  toDecimal,
  toMinor,
  zero,
} from '../../src/money/money.ts';

describe('readAmount', () => {
  test('splits the digits from the currency, with or without a space', () => {
    expect(readAmount('12.50 EUR')).toEqual({ decimal: '12.50', currency: 'EUR' });
    expect(readAmount('12.50EUR')).toEqual({ decimal: '12.50', currency: 'EUR' });
    expect(readAmount('1650')).toEqual({ decimal: '1650', currency: undefined });
  });

  test.each(['-5.00', '12,50', '£12', '1 650', '.50', '12.', '', 'EUR', '12.50 eur'])(
    'refuses %j',
    (text) => {
      expect(readAmount(text)).toBeUndefined();
    },
  );
});

describe('toMinor', () => {
  test('counts pence and cents', () => {
    expect(toMinor('12.5', 'GBP')).toEqual({ minor: 1250, currency: 'GBP' });
    expect(toMinor('0.07', 'EUR')).toEqual({ minor: 7, currency: 'EUR' });
  });

  test('knows a yen has no minor unit and a Kuwaiti dinar has a thousand', () => {
    expect(toMinor('1250', 'JPY')).toEqual({ minor: 1250, currency: 'JPY' });
    expect(toMinor('1250.5', 'JPY')).toBeUndefined();
    expect(toMinor('1.255', 'KWD')).toEqual({ minor: 1255, currency: 'KWD' });
    expect(toMinor('1.2555', 'KWD')).toBeUndefined();
  });

  test('takes two decimals for pounds and refuses a third', () => {
    expect(toMinor('1.25', 'GBP')?.minor).toBe(125);
    expect(toMinor('1.255', 'GBP')).toBeUndefined();
  });

  test('refuses a code that is no currency', () => {
    expect(toMinor('1.00', 'GBX')).toBeUndefined();
  });
});

describe('sum', () => {
  test('adds what binary fractions would not: 0.10 and 0.20 are 0.30', () => {
    const amounts = ['0.10', '0.20'].flatMap((text) => toMinor(text, 'GBP') ?? []);
    expect(sum(amounts, 'GBP')).toEqual({ minor: 30, currency: 'GBP' });
  });

  test('of nothing is nothing', () => {
    expect(sum([], 'EUR')).toEqual(zero('EUR'));
  });

  test('never adds two currencies', () => {
    expect(() => sum([{ minor: 1, currency: 'EUR' }], 'GBP')).toThrow('cannot add EUR to GBP');
  });
});

test('negate of nothing is plain nothing, not minus nothing', () => {
  expect(Object.is(negate(zero('GBP')).minor, 0)).toBe(true);
  expect(negate({ minor: 250, currency: 'GBP' })).toEqual({ minor: -250, currency: 'GBP' });
});

test('toDecimal keeps all decimals of the currency, and zeros before a small amount', () => {
  expect(toDecimal({ minor: 5, currency: 'GBP' })).toBe('0.05');
  expect(toDecimal({ minor: -123450, currency: 'GBP' })).toBe('-1234.50');
  expect(toDecimal({ minor: 1250, currency: 'JPY' })).toBe('1250');
  expect(toDecimal({ minor: 5, currency: 'KWD' })).toBe('0.005');
});

describe('showMoney', () => {
  test('groups thousands as the language does', () => {
    expect(showMoney({ minor: 123450, currency: 'GBP' }, 'en-GB')).toBe('£1,234.50');
    expect(showMoney({ minor: 123450, currency: 'EUR' }, 'de-DE')).toBe('1.234,50\u00a0€');
  });

  test('puts a true minus before a credit', () => {
    expect(showMoney({ minor: -250, currency: 'GBP' }, 'en-GB')).toBe('−£2.50');
  });

  test('shows as many decimals as the currency has', () => {
    expect(showMoney({ minor: 1250, currency: 'JPY' }, 'en-GB')).toBe('JP¥1,250');
    expect(showMoney({ minor: 1250, currency: 'KWD' }, 'en-GB')).toBe('KWD\u00a01.250');
  });

  test('loses no digit of a sum larger than a double holds with its cents', () => {
    expect(showMoney({ minor: 9007199254740991, currency: 'GBP' }, 'en-GB')).toBe(
      '£90,071,992,547,409.91',
    );
  });
});
