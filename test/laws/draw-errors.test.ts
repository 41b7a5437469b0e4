import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DrawnInput } from '../../src/measure/drawn-input.ts';
import { coverOfSum } from '../../src/measure/linear-part.ts';
import { type DrawOptions, drawDistribution } from '../../src/measure/monte-carlo.ts';
import { plainDraws } from '../measure/plain-draws.ts';
import { source, value } from '../measure/source.ts';

type Model = (values: Float64Array) => number;
type Case = [string, readonly DrawnInput[], Model, readonly number[] | undefined];

const even = (key: string, u: number) => source(key, u, { shape: 'rectangular' });
const student = (key: string, u: number, nu: number) => source(key, u, { nu, shape: 'student' });
const RUNS = 60;
const at = (x: Float64Array, index: number) => x[index] as number;

/** Spread of an end over seeds, beside the standard error that is said of it. */
function overSeeds(
  inputs: readonly DrawnInput[],
  model: Model,
  options: Omit<DrawOptions, 'seed'>,
) {
  const runs = Array.from({ length: RUNS }, (_, seed) =>
    drawDistribution(inputs, model, { ...options, seed: 7919 * seed + 1 }),
  );
  const of = (pick: (run: (typeof runs)[number]) => number) => {
    const values = runs.map(pick);
    const mean = values.reduce((sum, x) => sum + x, 0) / RUNS;
    return { mean, s: Math.sqrt(values.reduce((sum, x) => sum + (x - mean) ** 2, 0) / (RUNS - 1)) };
  };
  return (['low', 'high'] as const).map((end) => ({
    centre: of((run) => run[end]).mean,
    ratio: of((run) => run[end]).s / of((run) => run[`${end}Error`]).mean,
  }));
}

const near = (nu: number): readonly DrawnInput[] => [
  value(3, student('a', 0.2, nu)),
  value(2, even('b', 0.1)),
];
const wide: readonly DrawnInput[] = [value(0, source('a', 1)), value(0, source('b', 1))];
const quotient: Model = (x) => at(x, 0) / at(x, 1);
const product: Model = (x) => at(x, 0) * at(x, 1);
const least: Model = (x) => Math.min(at(x, 0), at(x, 1));

describe('the standard error of an end', () => {
  // 60 runs know their spread to 9 %. Evenness may make the ends surer than is said, never less.
  const cases: readonly Case[] = [
    ['a ratio, steered', near(4), quotient, [1 / 2, -3 / 4]],
    ['a ratio of ν = 1, steered', near(1), quotient, [1 / 2, -3 / 4]],
    ['a ratio, not steered', near(4), quotient, undefined],
    ['a product at 0', wide, product, [0, 0]],
    ['the least of two', wide, least, [0.5, 0.5]],
    ['one t by itself, not steered', [value(0, student('a', 1, 2))], (x) => at(x, 0), undefined],
    ['a square at 0', [value(0, source('a', 1))], (x) => at(x, 0) ** 2, [0]],
  ];
  test.each(cases)('covers what other seeds give: %s', (_, inputs, model, slopes) => {
    for (const draws of [50_000, 200_000]) {
      const options = slopes === undefined ? { draws } : { draws, slopes };
      for (const { ratio } of overSeeds(inputs, model, options)) expect(ratio).toBeLessThan(1.3);
    }
  });

  test('is not said much too large where evenness does not help', () => {
    for (const { ratio } of overSeeds(near(4), quotient, {
      draws: 200_000,
      slopes: [1 / 2, -3 / 4],
    }))
      expect(ratio).toBeGreaterThan(0.6);
    for (const { ratio } of overSeeds(wide, product, { draws: 50_000 }))
      expect(ratio).toBeGreaterThan(0.5);
  });

  test('hides no bias: the mean over seeds is what many plain draws give', () => {
    for (const [, inputs, model, slopes] of cases.slice(0, 5)) {
      const plain = plainDraws(inputs, model, { seed: 5, draws: 3_000_000 });
      const options = slopes === undefined ? { draws: 50_000 } : { draws: 50_000, slopes };
      const [low, high] = overSeeds(inputs, model, options);
      expect(Math.abs((low?.centre ?? 0) - plain.low)).toBeLessThan(4.5 * plain.lowError);
      expect(Math.abs((high?.centre ?? 0) - plain.high)).toBeLessThan(4.5 * plain.highError);
    }
  });
});

const size = fc.double({ min: 0.05, max: 5, noNaN: true });
const sources = fc.array(
  fc.record({
    u: size,
    nu: fc.integer({ min: 1, max: 12 }),
    shape: fc.constantFrom('normal', 'rectangular', 'student'),
  }),
  { minLength: 1, maxLength: 6 },
);

test('a straight model has the ends of its linear part, whatever it is made of', () => {
  fc.assert(
    fc.property(sources, fc.nat(), (list, seed) => {
      const parts = list.map(({ u, nu, shape }, index) => source(`s${index}`, u, { nu, shape }));
      const inputs = parts.map((part) => value(1, part));
      const model: Model = (x) => x.reduce((sum, one) => sum + one, 0);
      const cover = coverOfSum(parts) ?? 0;
      const slopes = parts.map(() => 1);
      const steered = drawDistribution(inputs, model, { seed, draws: 1_000_000, slopes });
      expect(Math.abs(steered.high - parts.length - cover)).toBeLessThan(0.5 * steered.highError);
      expect(Math.abs(steered.low - parts.length + cover)).toBeLessThan(0.5 * steered.lowError);
      const plain = plainDraws(inputs, model, { seed, draws: 100_000 });
      expect(Math.abs(plain.high - steered.high)).toBeLessThan(5 * plain.highError);
      expect(Math.abs(plain.low - steered.low)).toBeLessThan(5 * plain.lowError);
    }),
    { numRuns: 40 },
  );
});
