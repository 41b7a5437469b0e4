import { describe, expect, test } from 'vitest';
import { BLOCK } from '../../src/measure/even-draws.ts';
import { drawDistribution } from '../../src/measure/monte-carlo.ts';
import { source, value } from './source.ts';

const near = [
  value(3, source('a', 0.2, { nu: 4, shape: 'student' })),
  value(2, source('b', 0.1, { shape: 'rectangular' })),
];
const wide = [value(0, source('a', 1)), value(0, source('b', 1))];
const at = (values: Float64Array, index: number) => values[index] as number;

/** A ratio whose slopes are known, with how often it was asked for. */
function ratio(draws: number, seed: number) {
  let asked = 0;
  const model = (values: Float64Array) => {
    asked++;
    return at(values, 0) / at(values, 1);
  };
  const drawn = drawDistribution(near, model, { seed, draws, slopes: [1 / 2, -3 / 4] });
  return { ...drawn, asked };
}
const product = (draws: number, seed: number) =>
  drawDistribution(wide, (values) => at(values, 0) * at(values, 1), { seed, draws });

describe('the number of draws', () => {
  test('is what was asked for, in whole blocks, where nothing steers', () => {
    for (const seed of [1, 2])
      for (const [draws, blocks] of [
        [1, 1],
        [BLOCK, 1],
        [BLOCK + 1, 2],
        [50_000, 13],
        [200_000, 49],
      ] as const)
        expect(product(draws, seed).draws, `${draws}`).toBe(blocks * BLOCK);
  });

  test('is that of the runs of the model, but for the one that shows the centre', () => {
    for (const draws of [BLOCK, 200_000, 1_000_000]) {
      const { draws: said, asked } = ratio(draws, 5);
      expect(asked).toBe(said + 1);
    }
  });

  test('of one block alone, makes ends, mean and deviation of it', () => {
    const { low, high, mean, u } = product(BLOCK, 4);
    // The product of two standard normal numbers has the variance 1; its 2.5 % point lies near 2.2.
    expect([-low, high].map((end) => Math.round(end))).toEqual([2, 2]);
    expect(Math.abs(mean)).toBeLessThan(0.1);
    expect(u).toBeCloseTo(1, 0);
  });

  test('grows with what is asked, and goes little beyond it', () => {
    for (let seed = 1; seed <= 4; seed++) {
      const few = ratio(250_000, seed);
      const many = ratio(1_000_000, seed);
      expect(many.draws / few.draws).toBeGreaterThan(2);
      expect(many.draws / few.draws).toBeLessThan(8);
      expect(many.draws).toBeLessThan(70 * BLOCK);
      // The error that four times the draws halve.
      expect(few.lowError / many.lowError).toBeGreaterThan(1.5);
      expect(few.lowError / many.lowError).toBeLessThan(2.7);
    }
  });

  test('follows the end that is less sure', () => {
    // Far over to one side, so that the upper end takes many times the draws of the lower.
    const inputs = [value(0, source('a', 1))];
    for (const sign of [1, -1]) {
      const model = (values: Float64Array) => sign * Math.exp(sign * at(values, 0));
      const drawn = drawDistribution(inputs, model, { seed: 3, draws: 200_000, slopes: [1] });
      const density = Math.exp(-(1.96 ** 2) / 2) / Math.sqrt(2 * Math.PI) / Math.exp(1.96);
      const independent = Math.sqrt((0.025 * 0.975) / 200_000) / density;
      const far = sign > 0 ? drawn.highError : drawn.lowError;
      expect(far).toBeLessThan(1.2 * independent);
    }
  });
});
