import { describe, expect, test } from 'vitest';
import { limitsText } from '../../src/measure/limits-text.ts';
import { judge, limitsOf } from '../../src/measure/verdict.ts';
import type { Written } from '../book/project-of.ts';
import { figuresOf } from './spec-read.ts';

const band = { lower: 10, upper: 20 };
const specOf = (spec: Written) => figuresOf({ spec, readings: [] }).spec;

describe('judge', () => {
  test('meets only with the whole of U inside', () => {
    expect(judge(15, 1, band)).toBe('meets');
    expect(judge(19.5, 1, band)).toBe('undecided');
    expect(judge(20.5, 1, band)).toBe('undecided');
    expect(judge(21.5, 1, band)).toBe('does not meet');
    expect(judge(8.5, 1, band)).toBe('does not meet');
  });

  test('meets at the bound itself, at either end', () => {
    expect(judge(19, 1, band)).toBe('meets');
    expect(judge(11, 1, band)).toBe('meets');
    expect(judge(19.001, 1, band)).toBe('undecided');
  });

  test('is undecided where U just touches the bound from outside', () => {
    expect(judge(21, 1, band)).toBe('undecided');
    expect(judge(21.001, 1, band)).toBe('does not meet');
  });

  test('sees the bound through the rounding of binary fractions', () => {
    // 0.7 + 0.1 is 0.7999999999999999 and 0.1 + 0.2 is 0.30000000000000004.
    expect(judge(0.7, 0.1, { lower: undefined, upper: 0.8 })).toBe('meets');
    expect(judge(0.1, 0.2, { lower: undefined, upper: 0.3 })).toBe('meets');
  });

  test('can prove nothing with a U wider than the band', () => {
    expect(judge(15, 5, band)).toBe('meets');
    expect(judge(15, 5.1, band)).toBe('undecided');
    expect(judge(12, 30, band)).toBe('undecided');
    expect(judge(60, 30, band)).toBe('does not meet');
  });

  test('knows limits with one end open', () => {
    expect(judge(1000, 1, { lower: 10, upper: undefined })).toBe('meets');
    expect(judge(-1000, 1, { lower: undefined, upper: 20 })).toBe('meets');
    expect(judge(21.5, 1, { lower: undefined, upper: 20 })).toBe('does not meet');
  });
});

describe('limitsOf', () => {
  test('takes a least and a most in any unit of the quantity', () => {
    expect(limitsOf(specOf({ min: '1000 lb', max: '0.5 t' }))).toEqual({
      lower: 453.59237,
      upper: 500,
    });
  });

  test('takes a nominal value and its tolerance', () => {
    expect(limitsOf(specOf({ nominal: '100 kg', tolerance: '2 kg' }))).toEqual({
      lower: 98,
      upper: 102,
    });
  });

  test('takes a tolerance in kelvin for a temperature in either scale', () => {
    const celsius = { quantity: 'temperature', unit: '°C', nominal: '82 °C', tolerance: '3 K' };
    expect(limitsOf(specOf(celsius))).toEqual({ lower: 79, upper: 85 });
    const fahrenheit = { ...celsius, unit: '°F', nominal: '180 °F', tolerance: '5 K' };
    const limits = limitsOf(specOf(fahrenheit));
    expect([limits?.lower, limits?.upper].map((bound) => bound?.toFixed(9))).toEqual([
      '171.000000000',
      '189.000000000',
    ]);
  });

  test('turns a least number of miles to the gallon into a most of litres', () => {
    const limits = limitsOf(
      specOf({ quantity: 'consumption', unit: 'L/100km', min: '30 mpg(UK)' }),
    );
    expect(limits?.lower).toBeUndefined();
    expect(limits?.upper).toBeCloseTo(282.480936331822 / 30, 10);
  });

  test('has none where a spec has only a nominal value, or a target', () => {
    expect(limitsOf(specOf({ nominal: '100 kg' }))).toBeUndefined();
    expect(limitsOf(specOf({ target: '100 kg' }))).toBeUndefined();
  });
});

test('limitsText says limits as they were written', () => {
  const words = (spec: Written) => limitsText(specOf(spec), 'en-GB')?.replaceAll('\u00a0', ' ');
  expect(words({ min: '640 kg', max: '720.0 kg' })).toBe('640 kg to 720.0 kg');
  expect(words({ min: '1400 lb' })).toBe('at least 1,400 lb');
  expect(words({ max: '5 kg' })).toBe('at most 5 kg');
  expect(words({ nominal: '12.0 kg', tolerance: '0.2 kg' })).toBe('12.0 kg ± 0.2 kg');
  expect(words({ nominal: '12.0 kg' })).toBe('nominal 12.0 kg');
  expect(words({})).toBeUndefined();
});

test('a spec is judged by its latest reading, and by none whose U is not known', () => {
  const readings = [
    { date: '2025-03-01', values: '25' },
    { date: '2025-03-08', values: '15', state: 'after' },
  ];
  const instrument = { 'stated-error': '0.5 kg' };
  const limits = { min: '10 kg', max: '20 kg' };
  expect(figuresOf({ spec: limits, instrument, readings }).verdict).toBe('meets');
  expect(figuresOf({ spec: limits, readings }).verdict).toBeUndefined();
  expect(figuresOf({ instrument, readings }).verdict).toBeUndefined();
});
