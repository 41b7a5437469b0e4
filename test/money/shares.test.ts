import { expect, test } from 'vitest';
import { allocate, wholeWeights } from '../../src/money/allocate.ts';

const share = (minor: number, weights: readonly string[]) =>
  allocate({ minor, currency: 'EUR' }, wholeWeights(weights)).map((part) => part.minor);

test('whoever has no weight gets nothing, and the others all of it', () => {
  expect(share(1001, ['0', '1', '1'])).toEqual([0, 501, 500]);
  expect(share(-1001, ['1', '0'])).toEqual([-1001, 0]);
  expect(Object.is(share(-1001, ['1', '0'])[1], 0)).toBe(true);
});

test('what is left over goes to the larger remainders first, ties in the order of the rows', () => {
  // Exact parts of 7: 1.75, 1.75, 3.5. One each of what is left for the two largest remainders.
  expect(share(7, ['1', '1', '2'])).toEqual([2, 2, 3]);
  // Twelve equal parts of 3, a quarter each.
  expect(
    share(
      3,
      Array.from({ length: 12 }, () => '1'),
    ),
  ).toEqual([...[1, 1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0]]);
});

test('weights count as written, however many decimals each has', () => {
  expect(wholeWeights(['1.5', '2', '0.25'])).toEqual([150n, 200n, 25n]);
  expect(share(375, ['1.5', '2', '0.25'])).toEqual([150, 200, 25]);
});

test('shares of nobody are our bug, and say so', () => {
  expect(() => share(10, ['0'])).toThrow('shares need weights of zero or more, and one above it');
});
