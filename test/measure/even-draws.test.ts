import { describe, expect, test } from 'vitest';
import { BLOCK, fillEvenly, isStudent, slicesOf } from '../../src/measure/even-draws.ts';
import {
  normalQuantile,
  rectangularQuantile,
  studentQuantile,
} from '../../src/measure/quantiles.ts';
import { randomStream } from '../../src/measure/random.ts';

const NORMAL = { shape: 'normal', nu: Number.POSITIVE_INFINITY } as const;
const RECTANGLE = { ...NORMAL, shape: 'rectangular' } as const;
const STUDENT = { shape: 'student', nu: 5 } as const;
const kinds = [
  ['normal', NORMAL, false, normalQuantile],
  ['rectangular', RECTANGLE, false, rectangularQuantile],
  ['Student’s t', STUDENT, false, studentQuantile(5)],
  ['the normal number of a shared t', STUDENT, true, normalQuantile],
  [
    'a t without end of degrees',
    { ...STUDENT, nu: Number.POSITIVE_INFINITY },
    false,
    normalQuantile,
  ],
] as const;

function filled(seed: number, edges = slicesOf(RECTANGLE, false)): Float64Array {
  const row = new Float64Array(2 * BLOCK);
  fillEvenly(row, edges, randomStream(seed));
  return row;
}

describe('a row of even draws', () => {
  test.each(kinds)('has one in each equally likely slice: %s', (_, source, shared, quantile) => {
    const sorted = filled(3, slicesOf(source, shared)).slice(0, BLOCK).sort();
    for (const [slice, drawn] of sorted.entries()) {
      const [from, to] = [slice, slice + 1].map((end) => quantile(end / BLOCK));
      if (slice > 0) expect(drawn).toBeGreaterThanOrEqual((from as number) - 1e-9);
      if (slice < BLOCK - 1) expect(drawn).toBeLessThanOrEqual((to as number) + 1e-9);
    }
    expect(Number.isFinite(sorted[0]) && Number.isFinite(sorted[BLOCK - 1])).toBe(true);
  });

  test('holds the block twice', () => {
    const row = filled(4);
    expect(row.slice(BLOCK)).toEqual(row.slice(0, BLOCK));
  });

  test('lies anywhere in its slice, evenly', () => {
    const sorted = filled(5).slice(0, BLOCK).sort();
    const parts = sorted.map((drawn, slice) => ((drawn / Math.sqrt(3) + 1) / 2) * BLOCK - slice);
    const mean = parts.reduce((sum, part) => sum + part, 0) / BLOCK;
    const variance = parts.reduce((sum, part) => sum + (part - mean) ** 2, 0) / BLOCK;
    expect(Math.abs(mean - 1 / 2)).toBeLessThan(4 / Math.sqrt(12 * BLOCK));
    expect(variance).toBeCloseTo(1 / 12, 2);
    expect(Math.min(...parts)).toBeGreaterThan(-1e-9);
    expect(Math.max(...parts)).toBeLessThan(1 + 1e-9);
  });

  test('is in an order that tells nothing: any slice comes at any place', () => {
    const runs = 200;
    const slices = [0, 1, 2, BLOCK / 2, BLOCK - 2, BLOCK - 1];
    const places = Array.from({ length: runs }, (_, seed) => {
      const row = filled(seed).slice(0, BLOCK);
      const sorted = row.toSorted();
      return slices.map((slice) => row.indexOf(sorted[slice] as number));
    });
    for (const [index, slice] of slices.entries()) {
      const mean = places.reduce((sum, all) => sum + (all[index] as number), 0) / runs;
      const spread = BLOCK / Math.sqrt(12 * runs);
      expect(Math.abs(mean - BLOCK / 2), `${slice}`).toBeLessThan(4 * spread);
      expect(new Set(places.map((all) => all[index])).size).toBeGreaterThan(0.9 * runs);
    }
  });

  test('does not hang together from one draw to the next', () => {
    const row = filled(6);
    let sum = 0;
    for (let i = 0; i < BLOCK; i++) sum += (row[i] as number) * (row[i + 1] as number);
    expect(Math.abs(sum / BLOCK)).toBeLessThan(4 / Math.sqrt(BLOCK));
  });
});

describe('the slices of a source', () => {
  test.each(kinds)('end at its quantiles: %s', (_, source, shared, quantile) => {
    const { at } = slicesOf(source, shared);
    for (const slice of [1, 2, 100, BLOCK / 2, BLOCK - 100, BLOCK - 1])
      expect(at[slice]).toBeCloseTo(quantile(slice / BLOCK), 8);
  });

  test('are made once for each distribution', () => {
    expect(slicesOf(NORMAL, false)).toBe(slicesOf(STUDENT, true));
    expect(slicesOf(STUDENT, false)).toBe(slicesOf({ ...STUDENT }, false));
    expect(slicesOf(STUDENT, false)).not.toBe(slicesOf({ ...STUDENT, nu: 6 }, false));
    expect(slicesOf(RECTANGLE, false)).not.toBe(slicesOf(NORMAL, false));
  });
});

test('a source is drawn from Student’s t where it is one of finitely many degrees of freedom', () => {
  expect(
    [STUDENT, { ...STUDENT, nu: Number.POSITIVE_INFINITY }, { ...NORMAL, nu: 5 }].map(isStudent),
  ).toEqual([true, false, false]);
});
