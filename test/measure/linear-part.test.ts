import { describe, expect, test } from 'vitest';
import { besselK0, besselK1, studentCharacteristic } from '../../src/measure/characteristic.ts';
import { coverOfSum } from '../../src/measure/linear-part.ts';
import { normalQuantile, studentQuantile } from '../../src/measure/quantiles.ts';
import { coverageFactor } from '../../src/measure/student-t.ts';
import { source } from './source.ts';

const even = (key: string, u: number) => source(key, u, { shape: 'rectangular' });
const student = (key: string, u: number, nu: number, group = key) =>
  source(key, u, { nu, shape: 'student', group });

// JCGM 101:2008, 9.2.2 to 9.2.4 in closed form or by convolution (test/outside/monte-carlo.test.ts); sums of two rectangles are a
// triangle; sums of Cauchy's (ν = 1) are one again, with the widths added: tan(0.475·π)·(0.3 + 0.7).
const exact: readonly [string, readonly ReturnType<typeof source>[], number][] = [
  ['four normal', [1, 2, 3, 4].map((n) => source(`n${n}`, 1)), 3.919927969],
  ['four rectangular', [1, 2, 3, 4].map((n) => even(`r${n}`, 1)), 3.879406741],
  ['one of four wider', [1, 1, 1, 10].map((u, n) => even(`r${n}`, u)), 17.015814],
  ['a triangle', [even('a', 1), even('b', 1)], 2 * Math.sqrt(3) * (1 - Math.sqrt(0.05))],
  ['one rectangle and hardly more', [even('a', 1), even('b', 1e-6)], Math.sqrt(3) * 0.95],
  ['two Cauchy', [student('a', 0.3, 1), student('b', 0.7, 1)], Math.tan(0.475 * Math.PI)],
  [
    'repeats that share their spread',
    [student('a', 3, 2, 'g'), student('b', 4, 2, 'g')],
    5 * 4.30265273,
  ],
  ...[2, 3, 4, 5, 6, 9, 40].map(
    (nu) =>
      [
        `ν = ${nu} and hardly more`,
        [student('a', 1, nu), even('b', 1e-6)],
        coverageFactor(0.95, nu),
      ] as [string, ReturnType<typeof source>[], number],
  ),
];

describe('coverOfSum', () => {
  test.each(exact)('is right to a hundred-thousandth: %s', (_, terms, want) => {
    expect(Math.abs((coverOfSum(terms) ?? 0) / want - 1)).toBeLessThan(2e-5);
  });

  test('has nothing to say of no sources', () => {
    expect(coverOfSum([])).toBeUndefined();
    expect(coverOfSum([source('a', 0)])).toBeUndefined();
  });
});

// Abramowitz & Stegun, table 9.8 (e^x·K by 9.8; here without the factor).
test.each([
  [0.1, 2.4270690247, 9.8538447809],
  [1, 0.4210244382, 0.6019072302],
  [2, 0.1138938728, 0.1398658818],
  [5, 0.0036910983, 0.0040446134],
])('Bessel functions K₀ and K₁ of %d', (x, k0, k1) => {
  expect(Math.abs(besselK0(x) / k0 - 1)).toBeLessThan(2e-6);
  expect(Math.abs(besselK1(x) / k1 - 1)).toBeLessThan(2e-6);
});

test('the characteristic function of Student’s t falls from 1, for many repeats as the normal one', () => {
  for (const nu of [1, 2, 3, 4, 7, 10]) expect(studentCharacteristic(nu, 1e-5)).toBeCloseTo(1, 4);
  expect(studentCharacteristic(3, 2)).toBeCloseTo(3 * Math.exp(-2), 12);
  expect(studentCharacteristic(400, Math.sqrt(400))).toBeCloseTo(Math.exp(-0.5), 2);
});

test.each([1, 2, 3, 4, 7, 12, 40])(
  'quantiles of Student’s t are its coverage factors, ν = %i',
  (nu) => {
    for (const p of [0.5, 0.95, 0.9999]) {
      const k = coverageFactor(p, nu);
      expect(studentQuantile(nu)((1 + p) / 2) / k).toBeCloseTo(1, 8);
      expect(studentQuantile(nu)((1 - p) / 2) / k).toBeCloseTo(-1, 8);
    }
  },
);

test('quantiles of the normal distribution', () => {
  expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 12);
  expect(normalQuantile(1e-7)).toBeCloseTo(-5.199337582187471, 8);
  expect(normalQuantile(0.5)).toBe(0);
});
