import { Decimal } from 'decimal.js';
import {
  add,
  dinero,
  convert as dineroConvert,
  halfAwayFromZero,
  toSnapshot,
  transformScale,
} from 'dinero.js/bigint';
import { CLF, EUR, GBP, JPY, KWD } from 'dinero.js/bigint/currencies';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exponentOf } from '../../src/money/currency.ts';
import { convert, sum, toDecimal, toMinor } from '../../src/money/money.ts';

/** Currencies of all four exponents, as dinero.js knows them. */
const theirs = { JPY, GBP, EUR, KWD, CLF };
type Code = keyof typeof theirs;

const code = fc.constantFrom(...(Object.keys(theirs) as Code[]));
const minor = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 });
const rate = fc
  .tuple(fc.integer({ min: 1, max: 99_999_999 }), fc.integer({ min: 0, max: 8 }))
  .map(([digits, places]) => ({ digits, places, text: decimalText(digits, places) }));

/** `8648`, 4 → `0.8648`. */
function decimalText(digits: number, places: number): string {
  const text = String(digits).padStart(places + 1, '0');
  return places === 0 ? text : `${text.slice(0, -places)}.${text.slice(-places)}`;
}

/** Whole minor units up to here are exact in a double; nobody pays more. */
const isSafe = (amount: bigint) => amount <= 9007199254740991n && amount >= -9007199254740991n;

describe('against dinero.js', () => {
  test('sums are the same', () => {
    fc.assert(
      fc.property(fc.array(minor, { minLength: 1 }), code, (amounts, currency) => {
        const total = amounts
          .map((amount) => dinero({ amount: BigInt(amount), currency: theirs[currency] }))
          .reduce((all, next) => add(all, next));
        const ours = sum(
          amounts.map((amount) => ({ minor: amount, currency })),
          currency,
        );
        expect(BigInt(ours.minor)).toBe(toSnapshot(total).amount);
      }),
    );
  });

  test('conversions are the same, rounded half away from zero', () => {
    fc.assert(
      fc.property(minor, code, code, rate, (amount, from, to, { digits, places, text }) => {
        const exact = dineroConvert(
          dinero({ amount: BigInt(amount), currency: theirs[from] }),
          theirs[to],
          { [to]: { amount: BigInt(digits), scale: BigInt(places) } },
        );
        const rounded = transformScale(exact, theirs[to].exponent, halfAwayFromZero);
        const { amount: expected } = toSnapshot(rounded);
        fc.pre(from !== to && isSafe(expected));
        expect(BigInt(convert({ minor: amount, currency: from }, text, to).minor)).toBe(expected);
      }),
    );
  });
});

describe('against decimal.js', () => {
  const Exact = Decimal.clone({ precision: 60 });

  test('conversions are the same', () => {
    fc.assert(
      fc.property(minor, code, code, rate, (amount, from, to, { text }) => {
        const units = new Exact(toDecimal({ minor: amount, currency: from }))
          .times(text)
          .times(new Exact(10).pow(exponentOf(to) ?? 0));
        // ROUND_HALF_UP of decimal.js rounds by size, so a half goes away from zero.
        const expected = BigInt(units.toFixed(0, Decimal.ROUND_HALF_UP));
        fc.pre(isSafe(expected));
        expect(BigInt(convert({ minor: amount, currency: from }, text, to).minor)).toBe(expected);
      }),
    );
  });

  test('written amounts are worth the same', () => {
    fc.assert(
      fc.property(fc.nat(), code, (digits, currency) => {
        const places = exponentOf(currency) ?? 0;
        const text = decimalText(digits, places);
        const expected = new Exact(text).times(new Exact(10).pow(places));
        expect(toMinor(text, currency)?.minor).toBe(expected.toNumber());
      }),
    );
  });
});
