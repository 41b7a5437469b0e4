import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bankNumberIn } from '../../src/import/bank-number.ts';
import { dayReader } from '../../src/import/read-date.ts';
import { readNumber } from '../../src/import/read-money.ts';
import { splitLines } from '../../src/import/split-lines.ts';
import { decimalStyles } from '../../src/model/imports.ts';
import { addDays, type Day } from '../../src/time/day.ts';

const minor = fc.integer({ min: 0, max: 99_999_999_999 });

function written(cents: number, style: string, grouped: boolean): string {
  const digits = String(Math.floor(cents / 100));
  const group = style.length === 7 ? '' : style.charAt(1);
  const whole = grouped ? digits.replace(/\B(?=(\d{3})+$)/g, group) : digits;
  return `${whole}${style.at(-3)}${String(cents % 100).padStart(2, '0')}`;
}

const SIGNS: readonly ((text: string) => string)[] = [
  (text) => `-${text}`,
  (text) => `− ${text}`,
  (text) => `${text}-`,
  (text) => `(${text})`,
  (text) => `${text} S`,
  (text) => `${text} DR`,
];

describe('numbers', () => {
  test('of every style come back exactly, with every way to write a sign', () => {
    const cases = fc.record({
      minor,
      style: fc.constantFrom(...decimalStyles),
      grouped: fc.boolean(),
      sign: fc.option(fc.constantFrom(...SIGNS), { nil: undefined }),
      currency: fc.constantFrom('', ' EUR', ' €'),
    });
    fc.assert(
      fc.property(cases, ({ minor, style, grouped, sign, currency }) => {
        const plain = written(minor, style, grouped);
        const found = readNumber(`${sign ? sign(plain) : plain}${currency}`, style);
        expect(Math.round(Number(found?.decimal) * 100)).toBe(minor);
        expect(found?.decimal).toMatch(/^\d+\.\d\d$/);
        expect([found?.negative, found?.currency]).toEqual([
          sign !== undefined,
          currency ? 'EUR' : undefined,
        ]);
      }),
    );
  });

  test.each([
    ['12.50', '1.234,56'],
    ['1.2345,00', '1.234,56'],
    ['12,50', '1,234.56'],
    ['-12,50-', '1.234,56'],
    ['(-12.50)', '1234.56'],
    ['12.50 stones', '1234.56'],
    ['', '1234.56'],
    ['$5.00', '1234.56'],
  ] as const)('"%s" is none in the style %s', (text, style) => {
    expect(readNumber(text, style)).toBeUndefined();
  });

  test('with thousands and no decimals are read by their style', () => {
    expect(readNumber('1.234', '1.234,56')?.decimal).toBe('1234');
    expect(readNumber('1.234', '1234.56')?.decimal).toBe('1.234');
  });
});

describe('days', () => {
  const SHOW: Readonly<Record<string, (day: string) => string>> = {
    'YYYY-MM-DD': (day) => day,
    YYYYMMDD: (day) => day.replaceAll('-', ''),
    'DD/MM/YYYY': (day) => day.split('-').reverse().join('/'),
    'DD.MM.YY': (day) => day.slice(2).split('-').reverse().join('.'),
    'MM/DD/YYYY': (day) => `${day.slice(5, 7)}/${day.slice(8)}/${day.slice(0, 4)}`,
    'D MMM YYYY': (day) =>
      new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeZone: 'UTC' }).format(
        new Date(day),
      ),
  };

  test.each(Object.keys(SHOW))('written as %s come back', (style) => {
    const days = fc.integer({ min: 0, max: 36_500 }).map((n) => addDays('2000-01-01' as Day, n));
    fc.assert(
      fc.property(days, (day) => {
        expect(dayReader(style)?.(SHOW[style]?.(day) ?? '')).toBe(day);
      }),
    );
  });

  test('that do not exist, or of another style, are none', () => {
    const read = dayReader('DD.MM.YYYY');
    expect(read?.('31.09.2026')).toBeUndefined();
    expect(read?.('2026-09-30')).toBeUndefined();
    expect(read?.('3.9.2026 14:05')).toBe('2026-09-03');
    expect(dayReader('D MMM YYYY')?.('3 März 2026')).toBe('2026-03-03');
  });

  test('have no style without year, month and day once each', () => {
    expect(['DD.MM', 'DD.DD.YYYY', 'tt.mm.jjjj', 'YYY-MM-DD'].map(dayReader)).toEqual(
      Array(4).fill(undefined),
    );
  });
});

test('Cutting into lines loses no byte, whatever the quotes are', () => {
  const bytes = fc.array(fc.constantFrom(...'a";\r\n\xe4'), { maxLength: 60 });
  fc.assert(
    fc.property(bytes, (characters) => {
      const whole = Buffer.from(characters.join(''), 'latin1');
      const lines = splitLines(whole, 0x3b);
      expect(Buffer.concat(lines.map((line) => line.bytes)).equals(whole)).toBe(true);
    }),
  );
});

test('Account and card numbers are known by their check digits', () => {
  // The example of ISO 13616 for Germany, and a card number that is published for testing.
  expect(bankNumberIn('to DE89 3704 0044 0532 0130 00, rent')).toBe(true);
  expect(bankNumberIn('to DE88 3704 0044 0532 0130 00, rent')).toBe(false);
  expect(bankNumberIn('card 4111 1111 1111 1111')).toBe(true);
  expect(bankNumberIn('invoice 4111 1111 1111 1112')).toBe(false);
});
