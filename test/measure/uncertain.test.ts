import { describe, expect, test } from 'vitest';
import {
  correlation,
  mergeComponents,
  scaleComponents,
  spreadOf,
  standardUncertainty,
} from '../../src/measure/uncertain.ts';
import { source } from './source.ts';

describe('sources', () => {
  test('of their own add by the root of the sum of squares', () => {
    expect(standardUncertainty([source('a', 3), source('b', 4)])).toBe(5);
  });

  test('that are the same add with their signs, and can cancel', () => {
    expect(standardUncertainty([source('zero', 3), source('zero', 4)])).toBe(7);
    expect(standardUncertainty([source('zero', 3), source('zero', -3), source('b', 2)])).toBe(2);
    expect(mergeComponents([source('zero', 3), source('b', 2), source('zero', -1)])).toEqual([
      source('zero', 2),
      source('b', 2),
    ]);
  });

  test('that cancel leave nothing of the rounding behind', () => {
    const third = source('zero', 0.1 / 3);
    const parts = [source('zero', 0.1), ...[1, 2, 3].flatMap(() => scaleComponents([third], -1))];
    expect(0.1 - 0.1 / 3 - 0.1 / 3 - 0.1 / 3).not.toBe(0);
    expect(standardUncertainty(parts)).toBe(0);
  });

  test('worth a factor more keep all else', () => {
    const repeats = source('r-1 repeats', 0.5, { nu: 2, shape: 'student' });
    expect(scaleComponents([repeats], -4)).toEqual([{ ...repeats, u: -2 }]);
  });
});

describe('spreadOf', () => {
  test('gives u, effective degrees of freedom and U', () => {
    // Two equal sources, one of ν = 2 and one exactly known: ν = (2)²·2 = 8, t = 2.306004.
    const { u, nu, U } = spreadOf([source('a', 1, { nu: 2 }), source('b', 1)]);
    expect(u).toBeCloseTo(Math.SQRT2, 14);
    expect(nu).toBeCloseTo(8, 12);
    expect(U).toBeCloseTo(2.306004135 * Math.SQRT2, 8);
  });

  test('counts the sources of one group as one, with their degrees of freedom in common', () => {
    // Five repeats read together: u is √5·0.2, and still has 4 degrees of freedom, not 20.
    const together = [1, 2, 3, 4, 5].map((k) => source(`set ${k}`, 0.2, { group: 'set', nu: 4 }));
    const { u, nu } = spreadOf(together);
    expect(u).toBeCloseTo(Math.sqrt(5) * 0.2, 14);
    expect(nu).toBeCloseTo(4, 12);
  });

  test('knows nothing without sources, and where they all cancel', () => {
    const nothing = { u: undefined, nu: Number.POSITIVE_INFINITY, U: undefined };
    expect(spreadOf([])).toEqual(nothing);
    expect(spreadOf([source('zero', 3), source('zero', -3)])).toEqual(nothing);
  });
});

describe('correlation', () => {
  const a = [source('zero', 3), source('a', 4)];

  test('is one with itself, whatever its size, and minus one with its opposite', () => {
    expect(correlation(a, scaleComponents(a, 7))).toBeCloseTo(1, 14);
    expect(correlation(a, scaleComponents(a, -0.1))).toBeCloseTo(-1, 14);
  });

  test('is none where nothing is shared', () => {
    expect(correlation(a, [source('b', 1)])).toBe(0);
  });

  test('is the share that both have: 3·3/(5·5)', () => {
    expect(correlation(a, [source('b', 4), source('zero', 3)])).toBeCloseTo(9 / 25, 14);
  });
});
