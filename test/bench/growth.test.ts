import { expect, it } from 'vitest';
import { growth } from '../../src/bench/growth.ts';

it('finds the exponent of a power', () => {
  const square = [10, 200, 3000].map((amount) => ({ amount, seconds: 3 * amount ** 2 }));
  expect(growth(square)).toBeCloseTo(2, 12);
  const root = [10, 1000].map((amount) => ({ amount, seconds: Math.sqrt(amount) }));
  expect(growth(root)).toBeCloseTo(0.5, 12);
});

it('says nothing of a single size', () => {
  expect(growth([{ amount: 10, seconds: 1 }])).toBeUndefined();
});
