import { describe, expect, test } from 'vitest';
import {
  normalQuantile,
  type Quantile,
  rectangularQuantile,
  studentQuantile,
} from '../../src/measure/quantiles.ts';
import { normalBelow, studentBelow } from '../outside/distributions.ts';

const SHARES = [0.001, 0.025, 0.2, 0.4999, 0.5, 0.5001, 0.75, 0.9, 0.975, 0.999];

function expectInverse(quantile: Quantile, below: (x: number) => number) {
  for (const p of SHARES) expect(below(quantile(p)), `${p}`).toBeCloseTo(p, 10);
}

describe('quantiles', () => {
  test('of the normal distribution are those of Wichura’s check values', () => {
    // Algorithm AS 241, Applied Statistics 37 (1988), p. 480; from memory.
    for (const [p, x] of [
      [0.25, -0.6744897501960817],
      [0.001, -3.090232306167814],
      [1e-20, -9.26234008979841],
    ] as const) {
      expect(normalQuantile(p) / x).toBeCloseTo(1, 9);
    }
    expectInverse(normalQuantile, normalBelow);
  });

  test('have no step where the series gives way to the fraction, at −5', () => {
    const p = 2.866515718791939e-7;
    const [below, at, above] = [0.999, 1, 1.001].map((by) => normalQuantile(p * by));
    expect(at).toBeCloseTo(-5, 7);
    // The slope there is the density: Φ(−5)/φ(5).
    expect((above as number) - (at as number)).toBeCloseTo(0.001 * 0.1928, 6);
    expect((at as number) - (below as number)).toBeCloseTo(0.001 * 0.1928, 6);
  });

  test('of Student’s t are those of the table, and the inverse of its distribution', () => {
    // NIST Technical Note 1297, Table B.1, for 95 %.
    const table = [12.71, 4.3, 3.18, 2.78, 2.57, 2.45, 2.36, 2.31, 2.26, 2.23];
    for (const [index, t] of table.entries()) {
      const quantile = studentQuantile(index + 1);
      expect(Math.abs(quantile(0.975) - t), `ν = ${index + 1}`).toBeLessThan(0.0051);
      expect(quantile(0.025)).toBeCloseTo(-quantile(0.975), 9);
      expectInverse(quantile, (x) => studentBelow(x, index + 1));
    }
    expect(studentQuantile(50)(0.975)).toBeCloseTo(2.01, 2);
    expect(studentQuantile(35)(0.005)).toBeCloseTo(-2.72, 2);
  });

  test('of a rectangle of deviation 1 go evenly from −√3 to √3', () => {
    const ends = [0, 0.25, 0.5, 1].map((p) => rectangularQuantile(p));
    expect(ends).toEqual([-1, -0.5, 0, 1].map((x) => expect.closeTo(Math.sqrt(3) * x, 12)));
  });

  test('are the same wherever between there and the middle one begins', () => {
    for (const quantile of [normalQuantile, studentQuantile(3), studentQuantile(8)])
      for (const p of [1e-6, 0.1, 0.3, 0.7, 0.9, 1 - 1e-6]) {
        const at = quantile(p);
        for (const from of [0.5 * at, 0.9 * at, at])
          expect(quantile(p, from), `${p} from ${from}`).toBeCloseTo(at, 7);
      }
  });
});
