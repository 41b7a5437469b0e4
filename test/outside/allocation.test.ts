import { dinero, allocate as theirs, toSnapshot } from 'dinero.js/bigint';
import { GBP } from 'dinero.js/bigint/currencies';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allocate } from '../../src/money/allocate.ts';

const share = (minor: number, weights: readonly number[]) =>
  allocate({ minor, currency: 'GBP' }, weights.map(BigInt)).map((money) => money.minor);

describe('shares by the largest remainder', () => {
  test.each([
    // The seats of the usual example of the method (Wikipedia, "Largest remainders method", Hare quota); from memory, recomputed.
    [10, [47000, 16000, 15800, 12000, 6100, 3100], [5, 2, 1, 1, 1, 0]],
    // Inputs of infinitelexicon.com, "largest remainder method"; quotas 3.5, 2.1, 1.4.
    [7, [50, 30, 20], [4, 2, 1]],
    // M. Fowler, Patterns of Enterprise Application Architecture, "Money": five cents shared 3 to 7; from memory.
    [5, [3, 7], [2, 3]],
    // Arithmetic.
    [100, [1, 1, 1], [34, 33, 33]],
    [10000, [1, 1, 1, 1, 1, 1, 1], [1429, 1429, 1429, 1429, 1428, 1428, 1428]],
    [1000001, [80000, 70000, 50000], [400001, 350000, 250000]],
    [1230000, [4480, 15910, 9400], [184975, 656908, 388117]],
  ])('of %i over %j are %j', (total, weights, shares) => {
    expect(share(total, weights)).toEqual(shares);
    // A credit is shared by its size, then given its sign.
    const credits = shares.map((minor) => (minor === 0 ? 0 : -minor));
    expect(share(-total, weights)).toEqual(credits);
  });

  test('over nobody, or over weights of nothing, are refused', () => {
    expect(() => share(10, [])).toThrow(RangeError);
    expect(() => share(10, [0, 0])).toThrow(RangeError);
    expect(() => share(10, [2, -1])).toThrow(RangeError);
  });

  const total = fc.integer({ min: 0, max: 1_000_000 });
  const dineros = (amount: number, weights: readonly number[]) =>
    theirs(dinero({ amount: BigInt(amount), currency: GBP }), weights.map(BigInt)).map((part) =>
      Number(toSnapshot(part).amount),
    );

  test('are those of dinero.js over equal weights, where nobody has a larger remainder', () => {
    fc.assert(
      fc.property(total, fc.integer({ min: 1, max: 40 }), (amount, many) => {
        const weights = Array.from({ length: many }, () => 1);
        expect(share(amount, weights)).toEqual(dineros(amount, weights));
      }),
    );
  });

  test('are those of dinero.js where nothing is left over', () => {
    const weights = fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(total, weights, (times, all) => {
        const amount = times * all.reduce((sum, weight) => sum + weight, 0);
        expect(share(amount, all)).toEqual(dineros(amount, all));
      }),
    );
  });

  test('give the odd unit to the largest remainder, where dinero.js looks at the weights', () => {
    // Quotas 1.67 and 3.33.
    expect(dineros(5, [1, 2])).toEqual([1, 4]);
    expect(share(5, [1, 2])).toEqual([2, 3]);
  });
});

describe('joint cost by relative value', () => {
  test('of 80,000 over three products at split-off', () => {
    // M. W. Maher, cost accounting, problem 9-36.
    expect(share(80_000, [80_000, 70_000, 50_000])).toEqual([32_000, 28_000, 20_000]);
  });

  test('of 12,300 by net realisable value is as published', () => {
    // D. R. Hansen and M. M. Mowen, the case of L-Ten, Triol and Pioze: gallons × (price − further cost).
    const worth = (...lines: readonly (readonly [number, number, number])[]) =>
      lines.map(([gallons, cents, further]) => gallons * (cents - further));
    const first = worth([3200, 210, 70], [3700, 540, 110], [2000, 620, 150]);
    expect(share(12_300, first)).toEqual([1850, 6569, 3881]);
    const dearer = worth([3200, 210, 70], [3700, 540, 210], [2000, 620, 150]);
    expect(share(12_300, dearer)).toEqual([2112, 5756, 4432]);
  });
});
