import { describe, expect, test } from 'vitest';
import { budgetOf } from '../../src/measure/budget.ts';
import type { Measured } from '../../src/measure/reading.ts';
import { figuresOf, type SpecRead } from './spec-read.ts';

/** The one reading of a spec. */
function read(values: string, rest: Omit<SpecRead, 'readings'> & { unit?: string } = {}): Measured {
  const { unit, ...others } = rest;
  const { latest } = figuresOf({ ...others, readings: [{ values, ...(unit ? { unit } : {}) }] });
  if (latest?.kind !== 'read') throw new Error('the reading is not in the book');
  return latest;
}

describe('repeated values (type A)', () => {
  test('give the mean and s/√n with n − 1 degrees of freedom', () => {
    // Mean 10.2, s = 0.1, u = 0.1/√3; t for 2 degrees of freedom is 4.3027.
    const { value, s, u, nu, U } = read('10.1 10.3 10.2');
    expect(value).toBeCloseTo(10.2, 12);
    expect(s).toBeCloseTo(0.1, 12);
    expect(u).toBeCloseTo(0.1 / Math.sqrt(3), 12);
    expect(nu).toBeCloseTo(2, 12);
    expect(U).toBeCloseTo((4.3027 * 0.1) / Math.sqrt(3), 4);
  });

  test('that are all alike prove nothing of an instrument that states nothing', () => {
    expect(read('10.2 10.2 10.2')).toMatchObject({ s: 0, u: undefined, U: undefined });
  });
});

describe('what the instrument states (type B)', () => {
  test('a step of 1 kg is 1/√12 wide, with no limit of degrees of freedom', () => {
    const { u, nu, U } = read('640', { instrument: { step: '1 kg' } });
    expect(u).toBeCloseTo(1 / Math.sqrt(12), 12);
    expect(nu).toBe(Number.POSITIVE_INFINITY);
    expect(U).toBeCloseTo(1.959964 / Math.sqrt(12), 5);
  });

  test('a stated error of ±2 kg is 2/√3, and joins the step by the root of the sum of squares', () => {
    const { u } = read('640', { instrument: { step: '1 kg', 'stated-error': '2 kg' } });
    expect(u).toBeCloseTo(Math.sqrt(1 / 12 + 4 / 3), 12);
  });

  test('a certificate stands in for the stated error, with k = 2 when it names none', () => {
    const certified = { 'stated-error': '2 kg', 'certificate-u': '1 kg' };
    expect(read('640', { instrument: certified }).u).toBeCloseTo(0.5, 12);
    const three = { ...certified, 'certificate-k': '3' };
    expect(read('640', { instrument: three }).u).toBeCloseTo(1 / 3, 12);
  });

  test('joins the scatter of the repeats, which then has more than its n − 1 degrees of freedom', () => {
    const { u, nu } = read('10.1 10.3 10.2', { instrument: { 'stated-error': '0.1 kg' } });
    const scatter = 0.1 / Math.sqrt(3);
    expect(u).toBeCloseTo(scatter * Math.SQRT2, 12);
    // Two equal parts, one with 2 and one with ∞: (2)²·2 = 8.
    expect(nu).toBeCloseTo(8, 9);
  });

  test('one value and an instrument that states nothing leave U unknown, which is not 0', () => {
    expect(read('640')).toMatchObject({ value: 640, u: undefined, U: undefined, components: [] });
  });
});

describe('sources', () => {
  const stated = { 'stated-error': '2 kg' };
  const sources = (rest: Parameters<typeof read>[1], values = '640') =>
    read(values, rest).components.map(({ key, group, name, shape, how }) => [
      ...[key, group, name, shape, how],
    ]);

  test('have names of their own, and say how they were worked out', () => {
    expect(sources({ instrument: { ...stated, step: '0.5 kg' } })).toEqual([
      ['r-1 step', 'r-1 step', 'step', 'rectangular', 'δ/√12 = 0.5/√12'],
      ['r-1 stated error', 'r-1 stated error', 'stated error', 'rectangular', 'a/√3 = 2/√3'],
    ]);
    expect(sources({ instrument: { 'certificate-u': '0.0125 kg' } })).toEqual([
      ['r-1 certificate', 'r-1 certificate', 'certificate', 'normal', 'U/k = 0.0125/2'],
    ]);
  });

  test('are shared by readings of one instrument from the same zero', () => {
    const readings = ['640', '641'].map((values) => ({ values, zero: 'morning' }));
    const { latest } = figuresOf({ instrument: stated, readings });
    expect(latest?.components).toMatchObject([
      { key: 'scale morning stated error', group: 'scale morning stated error', zero: 'morning' },
    ]);
  });

  test('show as many decimals as the values have, and one more where the unit is another', () => {
    expect(read('640 640.25').decimals).toBe(2);
    expect(read('640.2', { unit: 'lb' }).decimals).toBe(2);
  });
});

describe('units', () => {
  test('a reading in pounds is worked out in the unit of its spec, its instrument too', () => {
    const { value, u, unit } = read('1000', { unit: 'lb', instrument: { step: '1 lb' } });
    expect(unit).toBe('kg');
    expect(value).toBeCloseTo(453.59237, 10);
    expect(u).toBeCloseTo(0.45359237 / Math.sqrt(12), 12);
  });

  test('an error of a thermometer converts without the zero of its scale', () => {
    const { value, u } = read('212', {
      spec: { quantity: 'temperature', unit: '°C' },
      unit: '°F',
      instrument: { 'stated-error': '1.8 °F' },
    });
    expect(value).toBeCloseTo(100, 9);
    expect(u).toBeCloseTo(1 / Math.sqrt(3), 12);
  });

  test('an error in miles to the gallon is as wide in litres as the curve is steep there', () => {
    // 282.480936/x at 30 mpg is 9.416 L/100 km, and ±1 mpg there is ±282.480936/900.
    const { value, u } = read('30', {
      spec: { quantity: 'consumption', unit: 'L/100km' },
      unit: 'mpg(UK)',
      instrument: { 'stated-error': '1 mpg(UK)' },
    });
    expect(value).toBeCloseTo(282.480936331822 / 30, 10);
    expect(u).toBeCloseTo(282.480936331822 / 900 / Math.sqrt(3), 12);
  });
});

test('budgetOf writes the working out with its numbers', () => {
  const measured = read('395 396 398', {
    instrument: { step: '1 kg', 'certificate-u': '1 kg', 'certificate-k': '2' },
  });
  // s² = (16/9 + 1/9 + 25/9)/2 = 7/3; u² = 7/9 + 1/12 + 1/4 = 10/9; ν = (10/9)²/((7/9)²/2) = 200/49.
  expect(budgetOf(measured, 'en-GB')).toEqual([
    'mean of 3 values: 396.33 kg',
    'standard deviation s = 1.53 kg, n − 1 = 2',
    'u of repeats: s/√n = 1.528/√3 = 0.882 kg',
    'u of step of the scale: δ/√12 = 1/√12 = 0.289 kg',
    'u of certificate: U/k = 1/2 = 0.500 kg',
    'combined u = 1.05 kg, degrees of freedom 4',
    'U = k·u = 2.78 × 1.05 = 2.93 kg at 95 %',
  ]);
  expect(budgetOf(read('640'), 'en-GB')).toEqual([
    'one value, in kg',
    'the instrument states no error, and one value shows no scatter: U is not known',
  ]);
});
