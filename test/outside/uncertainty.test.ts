import { describe, expect, test } from 'vitest';
import { coverageFactor } from '../../src/measure/student-t.ts';
import { combine, effectiveFreedom, expanded, usedFreedom } from '../../src/measure/uncertainty.ts';
import { judge } from '../../src/measure/verdict.ts';
import type { Written } from '../book/project-of.ts';
import { figuresOf } from '../measure/spec-read.ts';

const shareOff = (value: number | undefined, exact: number) =>
  Math.abs((value ?? Number.NaN) / exact - 1);

// NIST TN 1297 (1994) table B.1, which is GUM table G.2. The columns of 68.27, 95.45 and 99.73 % are those of 1, 2 and 3
// standard deviations of a normal distribution, erf(k/√2).
const probabilities = [0.6826894921370859, 0.9, 0.95, 0.9544997361036416, 0.99, 0.9973002039367398];
const tableB1 = `
    1  1.84  6.31 12.71 13.97 63.66 235.80
    2  1.32  2.92  4.30  4.53  9.92  19.21
    3  1.20  2.35  3.18  3.31  5.84   9.22
    4  1.14  2.13  2.78  2.87  4.60   6.62
    5  1.11  2.02  2.57  2.65  4.03   5.51
    6  1.09  1.94  2.45  2.52  3.71   4.90
    7  1.08  1.89  2.36  2.43  3.50   4.53
    8  1.07  1.86  2.31  2.37  3.36   4.28
    9  1.06  1.83  2.26  2.32  3.25   4.09
   10  1.05  1.81  2.23  2.28  3.17   3.96
   11  1.05  1.80  2.20  2.25  3.11   3.85
   12  1.04  1.78  2.18  2.23  3.05   3.76
   13  1.04  1.77  2.16  2.21  3.01   3.69
   14  1.04  1.76  2.14  2.20  2.98   3.64
   15  1.03  1.75  2.13  2.18  2.95   3.59
   16  1.03  1.75  2.12  2.17  2.92   3.54
   17  1.03  1.74  2.11  2.16  2.90   3.51
   18  1.03  1.73  2.10  2.15  2.88   3.48
   19  1.03  1.73  2.09  2.14  2.86   3.45
   20  1.03  1.72  2.09  2.13  2.85   3.42
   25  1.02  1.71  2.06  2.11  2.79   3.33
   30  1.02  1.70  2.04  2.09  2.75   3.27
   35  1.01  1.70  2.03  2.07  2.72   3.23
   40  1.01  1.68  2.02  2.06  2.70   3.20
   45  1.01  1.68  2.01  2.06  2.69   3.18
   50  1.01  1.68  2.01  2.05  2.68   3.16
  100 1.005 1.660 1.984 2.025 2.626  3.077
    ∞ 1.000 1.645 1.960 2.000 2.576  3.000`
  .trim()
  .split('\n')
  .map((line) => line.trim().split(/\s+/));

describe('NIST TN 1297 table B.1', () => {
  const cells = tableB1.flatMap(([freedom = '', ...row]) =>
    row.map((printed, column) => [freedom, printed, probabilities[column] ?? 0] as const),
  );

  test('is there whole: 28 rows of 6', () => {
    expect(cells).toHaveLength(28 * 6);
  });

  // ν = 35 at 90 % is printed as 1.70; it is 1.68957.
  const sound = cells.filter(([freedom, , p]) => !(freedom === '35' && p === 0.9));
  test.each(sound)('t for ν = %s is %s at p = %d', (freedom, printed, p) => {
    const nu = freedom === '∞' ? Number.POSITIVE_INFINITY : Number(freedom);
    const last = 10 ** -(printed.split('.')[1]?.length ?? 0);
    expect(Math.abs(coverageFactor(p, nu) - Number(printed))).toBeLessThan(0.51 * last);
  });

  test('the one cell left out is misprinted: two rows around it show that', () => {
    expect(coverageFactor(0.9, 35)).toBeCloseTo(1.68957, 5);
    expect(coverageFactor(0.9, 35)).toBeLessThan(coverageFactor(0.9, 30));
    expect(coverageFactor(0.9, 35)).toBeGreaterThan(coverageFactor(0.9, 40));
  });
});

describe('GUM G.4.1, Welch–Satterthwaite', () => {
  // Three inputs of 0.25 %, 0.57 % and 0.82 % from 10, 5 and 15 readings: u = 1.03 %, ν = 19.0, U95 = 2.09 u = 2.2 %.
  const parts = [
    { u: 0.25, nu: 9 },
    { u: 0.57, nu: 4 },
    { u: 0.82, nu: 14 },
  ];

  test('gives u and ν of the example', () => {
    expect(shareOff(combine(parts), 1.0294658809)).toBeLessThan(1e-8);
    expect(shareOff(effectiveFreedom(parts), 18.998742314)).toBeLessThan(1e-8);
  });

  test('uses 19 degrees of freedom for 18.9987, as the example does', () => {
    const nu = effectiveFreedom(parts);
    expect(usedFreedom(nu)).toBe(19);
    expect(shareOff(expanded({ u: combine(parts), nu }), 2.154696852)).toBeLessThan(1e-8);
  });
});

describe('GUM H.1, calibration of an end gauge (nm)', () => {
  const comparator = [
    { u: 5.8, nu: 24 },
    { u: 3.9, nu: 5 },
    { u: 6.7, nu: 8 },
  ];
  const d = { u: combine(comparator), nu: effectiveFreedom(comparator) };
  // 50 000 623 nm × 11.5e-6/K × 0.05/√3 K and 50 000 623 nm × 0.1 K × 1e-6/√3 /K.
  const parts = [
    { u: 25, nu: 18 },
    d,
    { u: (50_000_623 * 0.1 * 1e-6) / Math.sqrt(3), nu: 50 },
    { u: (50_000_623 * 11.5e-6 * 0.05) / Math.sqrt(3), nu: 2 },
  ];

  test('the difference read has u = 9.7', () => {
    expect(d.u).toBeCloseTo(9.681941953967707, 9);
  });

  test('the gauge has u = 32 and 16 usable degrees of freedom', () => {
    expect(Math.abs(combine(parts) - 32)).toBeLessThan(0.5);
    expect(shareOff(combine(parts), 31.663879111)).toBeLessThan(1e-9);
    expect(Math.abs(effectiveFreedom(parts) - 16.7)).toBeLessThan(0.1);
    expect(usedFreedom(effectiveFreedom(parts))).toBe(16);
  });

  test('U at 99 % is 93', () => {
    expect(Math.abs(coverageFactor(0.99, 16) * combine(parts) - 93)).toBeLessThan(1);
  });
});

test('GUM table H.2: means and standard uncertainties of five readings each', () => {
  const read = (values: string, quantity: string, unit: string) =>
    figuresOf({ spec: { quantity, unit }, readings: [{ values }] }).latest;
  const volts = read('5.007 4.994 5.005 4.990 4.999', 'voltage', 'V');
  const current = read('19.663 19.639 19.640 19.685 19.678', 'current', 'mA');
  const phase = read('1.0456 1.0438 1.0468 1.0428 1.0433', 'angle', 'rad');
  expect(shareOff(volts?.value, 4.999)).toBeLessThan(1e-15);
  expect(shareOff(volts?.u, 0.0032093613071762)).toBeLessThan(1e-9);
  expect(shareOff(current?.value, 19.661)).toBeLessThan(1e-15);
  expect(shareOff(current?.u, 0.00947100839404)).toBeLessThan(1e-9);
  expect(shareOff(phase?.value, 1.04446)).toBeLessThan(1e-15);
  expect(shareOff(phase?.u, 0.000752063827078527)).toBeLessThan(1e-9);
});

describe('GUM 4.3, type B divisors', () => {
  const u = (instrument: Written) =>
    figuresOf({ instrument, readings: [{ values: '5' }] }).latest?.u;

  test.each([
    [
      '±1 with nothing known of the shape, 4.3.7: a/√3',
      { 'stated-error': '1 kg' },
      0.5773502691896258,
    ],
    ['a digital step of 1, F.2.2.1: 0.29δ', { step: '1 kg' }, 0.28867513459481287],
    ['a caliper step of 0.02', { step: '0.02 kg' }, 0.005773502691896258],
    ['a certificate, 4.3.3: U/k', { 'certificate-u': '0.24 kg', 'certificate-k': '3' }, 0.08],
  ])('%s', (_, instrument, expected) => {
    expect(shareOff(u(instrument), expected)).toBeLessThan(1e-15);
  });
});

// ISO 14253-1: conformity is proved within LSL + U … USL − U, nonconformity beyond LSL − U … USL + U, in between neither.
test.each([
  [24.99, 0.004, 'meets'],
  [24.9835, 0.004, 'undecided'],
  [24.978, 0.004, 'undecided'],
  [24.9755, 0.004, 'does not meet'],
  [25.0041, 0.004, 'does not meet'],
  // At the bound, where editions and books differ, a value meets here.
  [24.996, 0.004, 'meets'],
  [24.99, 0.011, 'undecided'],
])('ISO 14253-1: %d ± %d against 24.980 to 25.000 %s', (value, U, verdict) => {
  expect(judge(value, U, { lower: 24.98, upper: 25 })).toBe(verdict);
});
