import { describe, expect, test } from 'vitest';
import { blockDrawer, TURNS } from '../../src/measure/draw-blocks.ts';
import type { DrawnInput } from '../../src/measure/drawn-input.ts';
import { BLOCK } from '../../src/measure/even-draws.ts';
import { randomStream } from '../../src/measure/random.ts';
import { source, value } from './source.ts';

const NONE = new Float64Array(BLOCK);
const at = (values: Float64Array, index: number) => values[index] as number;

/** What is left of y when the weighted others are taken out of the last input. */
const rest = (weights: readonly number[]) => (values: Float64Array) =>
  weights.reduce(
    (left, weight, index) => left - weight * at(values, index),
    at(values, weights.length),
  );

/** The first blocks of a model, each with the rows it was made of. */
function blocks(
  inputs: readonly DrawnInput[],
  model: (values: Float64Array) => number,
  { count = 1, slopes }: { count?: number; slopes?: readonly number[] } = {},
) {
  const next = blockDrawer({ inputs, model, slopes }, randomStream(7));
  return Array.from({ length: count }, () => {
    const { y, linear } = next();
    return { y: y.slice(), linear: linear.slice() };
  });
}
const first = (...asked: Parameters<typeof blocks>) =>
  blocks(...asked)[0] ?? { y: NONE, linear: NONE };
const largest = (row: Float64Array) => row.reduce((most, one) => Math.max(most, Math.abs(one)), 0);

describe('a block of draws', () => {
  const shared = (group: string) => ({ group, nu: 4, shape: 'student' as const });
  const weights = [2, 3, 5, 7, 11, 13];

  test('moves an input by each of its sources as much as they weigh, whatever their order', () => {
    // Four that are normal, and two of Student’s t that share their spread.
    const alone = [
      ...['a', 'b', 'c', 'd'].map((key) => source(key, 1)),
      ...['s', 't'].map((key) => source(key, 1, shared('set'))),
    ];
    const weighed = alone.map((one, index) => ({ ...one, u: weights[index] as number }));
    for (const order of [
      weighed,
      weighed.toReversed(),
      [...weighed.slice(2), ...weighed.slice(0, 2)],
    ]) {
      const inputs = [...alone.map((one) => value(10, one)), value(10 * 41 + 1, ...order)];
      const { y } = first(inputs, rest(weights));
      expect(largest(y.map((left) => left - 1))).toBeLessThan(1e-11);
      for (const [index] of alone.entries()) {
        const one = first(inputs, (values) => at(values, index)).y;
        expect(largest(one.map((x) => x - 10))).toBeGreaterThan(2);
      }
    }
  });

  test('is not moved by a source of nothing', () => {
    const inputs = [value(3, source('a', 0), source('b', 1)), value(3, source('b', 1))];
    expect(first(inputs, rest([1])).y).toEqual(NONE);
  });

  test('holds the linear part of the same draws, and none where no slopes are known', () => {
    const inputs = [value(3, source('a', 1)), value(4, source('b', 1), source('a', 2))];
    const sum = (values: Float64Array) => 2 * at(values, 0) - 3 * at(values, 1) + 6;
    const { y, linear } = first(inputs, sum, { slopes: [2, -3] });
    expect(largest(linear)).toBeGreaterThan(5);
    expect(largest(y.map((one, index) => one - (linear[index] as number)))).toBeLessThan(1e-12);
    expect(first(inputs, sum).linear).toEqual(NONE);
  });

  test('of Student’s t that share their spread is as wide as the one they make together', () => {
    // NIST Technical Note 1297, Table B.1: 2.78 for ν = 4 at 95 %.
    const halves = ['s', 't'].map((key) => source(key, Math.SQRT1_2, shared('set')));
    const all = blocks([value(0, ...halves)], (values) => at(values, 0), { count: 24 });
    const beyond = all.flatMap(({ y }) => [...y].filter((one) => Math.abs(one) > 2.776)).length;
    expect(Math.abs(beyond / (24 * BLOCK) - 0.05)).toBeLessThan(
      4 * Math.sqrt((0.05 * 0.95) / (24 * BLOCK)),
    );
  });
});

describe('rows of random numbers', () => {
  const inputs = [value(0, source('a', 1)), value(0, source('b', 1))];

  test('serve for sixteen blocks, and then there are new ones', () => {
    const all = blocks(inputs, (values) => at(values, 0), { count: 2 * TURNS + 1 });
    const sorted = all.map(({ y }) => y.toSorted());
    const alike = (from: number, to: number) =>
      sorted.slice(from, to).every((row) => row.every((one, k) => one === sorted[from]?.[k]));
    expect(alike(0, TURNS)).toBe(true);
    expect(alike(TURNS, 2 * TURNS)).toBe(true);
    for (const turn of [TURNS, 2 * TURNS]) expect(sorted[turn]).not.toEqual(sorted[turn - 1]);
  });

  test('are turned against each other, so that what comes together is new each time', () => {
    const all = blocks(inputs, (values) => at(values, 0) - at(values, 1), { count: TURNS });
    const sums = all.map(({ y }) => y.reduce((sum, one) => sum + one * one, 0));
    expect(new Set(sums).size).toBe(TURNS);
  });
});
