import { expect, test } from 'vitest';
import { mean, standardDeviation } from '../../src/measure/statistics.ts';

test('the mean of equal readings is that reading, to its last digit', () => {
  // 0.1 + 0.1 + 0.1 is 0.30000000000000004 in binary, a third of which is not 0.1.
  expect(mean([0.1, 0.1, 0.1])).toBe(0.1);
  expect(standardDeviation([0.1, 0.1, 0.1])).toBe(0);
});

test('readings that differ in their last digit scatter as much as small ones that differ so', () => {
  // The mean of these has no double of its own; the scatter is that of 0, 1, 1.
  const far = 2 ** 51;
  expect(standardDeviation([far, far + 1, far + 1])).toBeCloseTo(Math.sqrt(1 / 3), 12);
});
