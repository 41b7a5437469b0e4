import { describe, expect, test } from 'vitest';
import type { DrawnInput } from '../../src/measure/drawn-input.ts';
import { drawDistribution } from '../../src/measure/monte-carlo.ts';
import type { Component } from '../../src/measure/uncertain.ts';
import { source, value } from './source.ts';

const DRAWS = 200_000;
type Model = (values: Float64Array) => number;
const first: Model = (values) => values[0] as number;
const sum: Model = (values) => values.reduce((all, x) => all + x, 0);
const draw = (inputs: readonly DrawnInput[], model: Model, seed = 1, draws = DRAWS) =>
  drawDistribution(inputs, model, { seed, draws });
const rectangular = (key: string, u: number) => source(key, u, { shape: 'rectangular' });
const student = (key: string, nu: number, more: Partial<Component> = {}) =>
  source(key, 1, { nu, shape: 'student', ...more });

describe('drawDistribution', () => {
  test('gives the same for the same seed, and something else for another', () => {
    const inputs = [value(5, source('a', 2))];
    expect(draw(inputs, first, 7)).toEqual(draw(inputs, first, 7));
    const before = draw(inputs, first, 7);
    // Rows are used again by whoever draws next.
    draw([value(1, rectangular('r', 3), student('t', 3)), value(2, source('b', 1))], sum, 9);
    expect(draw(inputs, first, 7)).toEqual(before);
    expect(draw(inputs, first, 8).low).not.toBe(draw(inputs, first, 7).low);
  });

  test('draws a rectangle within its ends, and none beyond', () => {
    const ends = { least: 0, most: 0 };
    const { mean, u, low, high } = draw([value(10, rectangular('a', 1))], (values) => {
      const y = values[0] as number;
      ends.least = Math.min(ends.least, y - 10);
      ends.most = Math.max(ends.most, y - 10);
      return y;
    });
    // A row has one draw in each 4096th of the distribution; the outermost of four rows are within a part of that of the ends.
    expect([ends.least, ends.most].map((end) => end / Math.sqrt(3))).toEqual([
      expect.closeTo(-1, 3),
      expect.closeTo(1, 3),
    ]);
    expect(Math.max(-ends.least, ends.most)).toBeLessThan(Math.sqrt(3));
    expect([mean, u]).toEqual([expect.closeTo(10, 2), expect.closeTo(1, 2)]);
    expect([low, high].map((end) => (end - 10) / Math.sqrt(3))).toEqual([
      expect.closeTo(-0.95, 2),
      expect.closeTo(0.95, 2),
    ]);
  });

  test('moves all that share a source together, each by its own weight', () => {
    const shared = [
      value(1, source('zero', 3), source('a', 0.1)),
      value(1, source('zero', 3)),
      value(1, source('zero', -6)),
    ];
    const { mean, u } = draw(shared, sum);
    expect([mean, u]).toEqual([expect.closeTo(3, 2), expect.closeTo(0.1, 3)]);
  });

  test('leaves a value without sources where it is', () => {
    const { mean, u, low, high } = draw([value(4), value(2)], ([a, b]) => (a ?? 0) ** (b ?? 0));
    expect([mean, u, low, high]).toEqual([16, 0, expect.closeTo(16, 9), expect.closeTo(16, 9)]);
  });

  test('gives few repeats the width of Student’s t, far tails and all', () => {
    for (const [nu, t] of [
      [1, 12.706],
      [2, 4.303],
      [4, 2.776],
      [9, 2.262],
    ] as const) {
      const { low, high, lowError, highError } = draw([value(0, student('a', nu))], first);
      expect(Math.abs(low + t), `ν = ${nu}`).toBeLessThan(4 * lowError);
      expect(Math.abs(high - t), `ν = ${nu}`).toBeLessThan(4 * highError);
    }
  });

  test('draws what was read together with one spread: two halves are as wide as the whole', () => {
    const halves = ['set 1', 'set 2'].map((key) =>
      student(key, 2, { group: 'set', u: Math.SQRT1_2 }),
    );
    const { low, high, highError } = draw([value(0, ...halves)], first);
    expect(Math.abs(high - 4.303)).toBeLessThan(4 * highError);
    expect(high + low).toBeCloseTo(0, 0);
  });

  test('has an interval that is not even where the model bends', () => {
    // exp of a standard normal: 95 % between exp(−1.96) and exp(1.96).
    const { low, high, lowError, highError } = draw([value(0, source('a', 1))], ([a]) =>
      Math.exp(a ?? 0),
    );
    expect(Math.abs(low - Math.exp(-1.959964))).toBeLessThan(4 * lowError);
    expect(Math.abs(high - Math.exp(1.959964))).toBeLessThan(4 * highError);
  });
});
