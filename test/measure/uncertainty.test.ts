import { describe, expect, test } from 'vitest';
import {
  mergeComponents,
  scaleComponents,
  spreadOf,
  standardUncertainty,
} from '../../src/measure/uncertain.ts';
import {
  decimalsFor,
  effectiveFreedom,
  expanded,
  usedFreedom,
} from '../../src/measure/uncertainty.ts';
import { source } from './source.ts';

test.each([
  [0.0123, 3],
  [0.1, 2],
  [1, 1],
  [12, 0],
  [340, -1],
  // What rounds up to the next power of ten needs one decimal fewer; a hair less does not.
  [0.0996, 2],
  [0.0994, 3],
  [9.96, 0],
  [9.94, 1],
  [99.6, -1],
])('two digits of an uncertainty of %f take %i decimals', (size, decimals) => {
  expect(decimalsFor(size)).toBe(decimals);
});

test.each([
  [0.4, 1],
  [1, 1],
  [2.94, 2],
  [2.96, 3],
  [18.99, 19],
  [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
])('of %f degrees of freedom %f are used', (nu, used) => {
  expect(usedFreedom(nu)).toBe(used);
});

test('exactly known parts leave no limit to the degrees of freedom, and parts of nothing add none', () => {
  const exact = { u: 2, nu: Number.POSITIVE_INFINITY };
  expect(effectiveFreedom([exact, exact])).toBe(Number.POSITIVE_INFINITY);
  expect(effectiveFreedom([exact, { u: 0, nu: 3 }])).toBe(Number.POSITIVE_INFINITY);
  expect(effectiveFreedom([{ u: 3, nu: 4 }])).toBeCloseTo(4, 12);
  // (1² + 1²)² / (1⁴/4 + 1⁴/12)
  expect(
    effectiveFreedom([
      { u: 1, nu: 4 },
      { u: 1, nu: 12 },
    ]),
  ).toBeCloseTo(12, 12);
});

test('U of what nothing is known of is not known', () => {
  expect(expanded({ u: undefined, nu: 5 })).toBeUndefined();
  expect(expanded({ u: 1, nu: Number.POSITIVE_INFINITY })).toBeCloseTo(1.959964, 6);
});

describe('one source in parts', () => {
  test('that cancel but for a little leave that little, whatever the size', () => {
    for (const size of [1e-9, 1, 1e6]) {
      const [left] = mergeComponents([source('zero', size), source('zero', -0.999 * size)]);
      expect((left?.u ?? 0) / size).toBeCloseTo(0.001, 9);
    }
  });

  test('that cancel up to rounding leave nothing, whatever the size', () => {
    for (const size of [1e-9, 1, 1e6]) {
      const tenths = Array.from({ length: 7 }, () => source('zero', size / 7));
      const parts = [source('zero', size), ...scaleComponents(tenths, -1)];
      expect(standardUncertainty(parts)).toBe(0);
    }
  });

  test('that cancel are measured by the largest of them, whatever its sign', () => {
    const parts = [source('zero', -1e6), source('zero', 1e6 / 3), source('zero', 2e6 / 3)];
    expect(standardUncertainty(parts)).toBe(0);
  });

  test('keep name and degrees of freedom of the source', () => {
    const zero = { nu: 9, how: '0.02 mm / √3' };
    expect(mergeComponents([source('zero', 1, zero), source('zero', 2, zero)])).toEqual([
      source('zero', 3, zero),
    ]);
  });
});

test('where every part is exactly known there is no limit to the degrees of freedom', () => {
  expect(spreadOf([source('a', 3), source('b', 4)])).toEqual({
    u: 5,
    nu: Number.POSITIVE_INFINITY,
    U: 5 * 1.959963984540054,
  });
});
