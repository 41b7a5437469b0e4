import { describe, expect, test } from 'vitest';
import { mean, standardDeviation } from '../../src/measure/statistics.ts';

// NIST Statistical Reference Datasets, univariate summary statistics: data and certified values.
// The tolerances are those that a sound two-pass computation in double precision reaches: the data of NumAcc3 and NumAcc4
// are not representable in binary, so that their spread is only as good as their last digits.

const read = (text: string) => text.trim().split(/\s+/).map(Number);

/** NumAcc2 to NumAcc4: a number with a 2 at its end, then 500 times the same with a 1 and with a 3. */
const alternating = (whole: number) => [
  Number(`${whole}.2`),
  ...Array.from({ length: 500 }, () => [Number(`${whole}.1`), Number(`${whole}.3`)]).flat(),
];

/** Michelson, 1879: speed of light in air, in thousands of kilometres a second. */
const michelso = read(`
  299.85 299.74 299.90 300.07 299.93 299.85 299.95 299.98 299.98 299.88 300.00 299.98 299.93 299.65 299.76 299.81 300.00
  300.00 299.96 299.96 299.96 299.94 299.96 299.94 299.88 299.80 299.85 299.88 299.90 299.84 299.83 299.79 299.81 299.88
  299.88 299.83 299.80 299.79 299.76 299.80 299.88 299.88 299.88 299.86 299.72 299.72 299.62 299.86 299.97 299.95 299.88
  299.91 299.85 299.87 299.84 299.84 299.85 299.84 299.84 299.84 299.89 299.81 299.81 299.82 299.80 299.77 299.76 299.74
  299.75 299.76 299.91 299.92 299.89 299.86 299.88 299.72 299.84 299.85 299.85 299.78 299.89 299.84 299.78 299.81 299.76
  299.81 299.79 299.81 299.82 299.85 299.87 299.87 299.81 299.74 299.81 299.94 299.95 299.80 299.81 299.87
`);

/** Mavrodineanu: transmittance of a filter. */
const mavro = read(`
  2.0018 2.0017 2.0018 2.0019 2.0018 2.0017 2.0015 2.0014 2.0015 2.0015 2.0017 2.0018 2.0018 2.0019 2.0019 2.0021 2.002
  2.0016 2.0014 2.0013 2.0013 2.0015 2.0015 2.0016 2.0015 2.0014 2.0013 2.0014 2.0015 2.0014 2.0015 2.0016 2.0015 2.0016
  2.0019 2.002 2.002 2.0021 2.0022 2.0023 2.0024 2.0025 2.0027 2.0026 2.0026 2.0026 2.0027 2.0026 2.0025 2.0024
`);

const sets = [
  { name: 'NumAcc1', values: [10000001, 10000003, 10000002], m: 10000002, s: 1, within: 2e-13 },
  { name: 'NumAcc2', values: alternating(1), m: 1.2, s: 0.1, within: 2e-13 },
  { name: 'NumAcc3', values: alternating(1000000), m: 1000000.2, s: 0.1, within: 1e-9 },
  { name: 'NumAcc4', values: alternating(10000000), m: 10000000.2, s: 0.1, within: 1e-8 },
  { name: 'Michelso', values: michelso, m: 299.8524, s: 0.0790105478190518, within: 2e-13 },
  { name: 'Mavro', values: mavro, m: 2.001856, s: 0.000429123454003053, within: 2e-13 },
];

describe('NIST StRD', () => {
  test('the sets have as many values as NIST says', () => {
    expect(sets.map(({ values }) => values.length)).toEqual([3, 1001, 1001, 1001, 100, 50]);
  });

  test.each(sets)('the mean of $name is the certified one', ({ values, m }) => {
    expect(Math.abs(mean(values) / m - 1)).toBeLessThan(2e-14);
  });

  test.each(sets)('the standard deviation of $name is the certified one', (set) => {
    expect(Math.abs(standardDeviation(set.values) / set.s - 1)).toBeLessThan(set.within);
  });

  test('a one-pass sum of squares would fail, so the sets do tell a bad way from a good one', () => {
    const onePass = (values: readonly number[]) => {
      const sum = values.reduce((all, value) => all + value, 0);
      const squares = values.reduce((all, value) => all + value * value, 0);
      return Math.sqrt((squares - (sum * sum) / values.length) / (values.length - 1));
    };
    expect(Math.abs(onePass(alternating(1000000)) / 0.1 - 1)).toBeGreaterThan(0.05);
    expect(onePass(alternating(10000000))).toBeNaN();
  });
});
