import { describe, expect, test } from 'vitest';
import { correlation, ranksOf } from '../../src/plan/forecast-summary.ts';

const rankCorrelation = (one: readonly number[], other: readonly number[]) =>
  correlation(ranksOf(Float64Array.from(one)), ranksOf(Float64Array.from(other)));

describe('Spearman’s rank correlation', () => {
  test('of ten people’s intelligence and hours of television is −29/165', () => {
    // The much-copied textbook example; values from memory. By 1 − 6Σd²/(n(n² − 1)) with Σd² = 194.
    const points = [106, 100, 86, 101, 99, 103, 97, 113, 112, 110];
    const hours = [7, 27, 2, 50, 28, 29, 20, 12, 6, 17];
    expect(rankCorrelation(points, hours)).toBeCloseTo(-29 / 165, 12);
  });

  test('gives equal numbers the middle of their places', () => {
    expect([...ranksOf(Float64Array.of(5, 1, 5, 9, 5))]).toEqual([2, 0, 2, 4, 2]);
  });

  test('is not swayed by one number far out', () => {
    expect(rankCorrelation([1, 2, 3, 4, 1e12], [10, 20, 30, 40, 50])).toBe(1);
  });

  test('is undefined where a list does not vary', () => {
    expect(rankCorrelation([3, 3, 3], [1, 2, 3])).toBeUndefined();
  });
});
