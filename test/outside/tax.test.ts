import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { taxOf } from '../../src/money/tax.ts';

const Exact = Decimal.clone({ precision: 60 });
const taxIn = (minor: number, rate: string, side: 'inside' | 'outside') =>
  taxOf({ minor, currency: 'GBP' }, rate, side).tax.minor;

describe('tax', () => {
  test.each([
    // HMRC, the VAT fraction: at 20 % a sixth of what was paid (from memory); the others by the same arithmetic.
    ['120.00 with 20 % in it', 12_000, '20', 'inside', 2000],
    ['100.00 with 20 % in it', 10_000, '20', 'inside', 1667],
    ['119.00 with 19 % in it', 11_900, '19', 'inside', 1900],
    ['100.00 with 27 % in it', 10_000, '27', 'inside', 2126],
    ['100.00 and 20 % on top', 10_000, '20', 'outside', 2000],
    // HMRC internal manual VATREC12010 (Notice 700 §17.5): line by line to the nearest penny; three such rows bear 0.21.
    ['0.33 and 20 % on top', 33, '20', 'outside', 7],
  ] as const)('of %s', (_, minor, rate, side, tax) => {
    expect(taxIn(minor, rate, side)).toBe(tax);
  });

  test('stands beside the amount: inside it stays, outside it comes on top', () => {
    expect(taxOf({ minor: 12_000, currency: 'GBP' }, '20', 'inside').withTax.minor).toBe(12_000);
    expect(taxOf({ minor: 10_000, currency: 'GBP' }, '20', 'outside').withTax.minor).toBe(12_000);
  });

  test('is that of decimal.js for any amount and rate, rounded half away from zero', () => {
    const rate = fc
      .tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 0, max: 999 }))
      .map(([whole, part]) => (part === 0 ? `${whole}` : `${whole}.${part}`));
    const amount = fc.integer({ min: 0, max: 1_000_000_000 });
    fc.assert(
      fc.property(amount, rate, fc.constantFrom('inside', 'outside'), (minor, percent, side) => {
        const base = side === 'inside' ? new Exact(100).plus(percent) : new Exact(100);
        const exact = new Exact(minor).times(percent).div(base);
        // ROUND_HALF_UP of decimal.js rounds by size, so a half goes away from zero.
        expect(taxIn(minor, percent, side)).toBe(
          exact.toDecimalPlaces(0, Decimal.ROUND_HALF_UP).toNumber(),
        );
      }),
    );
  });
});
