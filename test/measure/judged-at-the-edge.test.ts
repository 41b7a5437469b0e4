import { describe, expect, test } from 'vitest';
import { judge, judgeInterval, limitsOf } from '../../src/measure/verdict.ts';
import type { Written } from '../book/project-of.ts';
import { figuresOf } from './spec-read.ts';

const specOf = (spec: Written) => figuresOf({ spec, readings: [] }).spec;
const atLeast = (lower: number) => ({ lower, upper: undefined });
const atMost = (upper: number) => ({ lower: undefined, upper });

describe('a limit on one side only', () => {
  test('is met, not met or left open by that side alone', () => {
    expect(judge(11, 1, atLeast(10))).toBe('meets');
    expect(judge(9.5, 1, atLeast(10))).toBe('undecided');
    expect(judge(8.5, 1, atLeast(10))).toBe('does not meet');
    expect(judge(19, 1, atMost(20))).toBe('meets');
    expect(judge(20.5, 1, atMost(20))).toBe('undecided');
    expect(judge(21.5, 1, atMost(20))).toBe('does not meet');
  });

  test('is touched from outside without being decided, at the lower end too', () => {
    expect(judge(9, 1, atLeast(10))).toBe('undecided');
    expect(judge(8.999, 1, atLeast(10))).toBe('does not meet');
  });

  test('may be below zero', () => {
    expect(judge(-0.3, 0.1, atLeast(-0.4))).toBe('meets');
    expect(judge(-0.1, 0.2, atLeast(-0.3))).toBe('meets');
    expect(judge(-0.5, 0.1, atMost(-0.4))).toBe('meets');
    expect(judge(-0.2, 0.1, atMost(-0.4))).toBe('does not meet');
  });
});

test('a bound is seen through binary rounding at any size of the numbers', () => {
  // 250000.7 + 0.1 is 250000.80000000002, and 123456.6 + 0.1 is 123456.70000000001.
  expect(judge(250000.7, 0.1, atMost(250000.8))).toBe('meets');
  expect(judge(123456.6, 0.1, atMost(123456.7))).toBe('meets');
  // 0.3 − 0.1 is 0.19999999999999998.
  expect(judge(0.3, 0.1, atLeast(0.2))).toBe('meets');
  // Seen from outside, too: what only touches is not decided.
  expect(judge(0.8, 0.1, atMost(0.7))).toBe('undecided');
  expect(judge(250000.9, 0.1, atMost(250000.8))).toBe('undecided');
});

test('a difference that is no rounding counts, however small', () => {
  expect(judgeInterval({ low: 1e-6, high: 2.001e-6 }, atMost(2e-6))).toBe('undecided');
  expect(judgeInterval({ low: 2.001e-6, high: 3e-6 }, atMost(2e-6))).toBe('does not meet');
  expect(judgeInterval({ low: 0.999e-6, high: 2e-6 }, atLeast(1e-6))).toBe('undecided');
});

describe('limits', () => {
  test('of so much a length grow with the length that was read over, each as far as it is there', () => {
    const per = { per: '100 mm', over: '1 m' };
    expect(limitsOf(specOf({ unit: 'mm', quantity: 'length', max: '0.02 mm', ...per }))).toEqual({
      lower: undefined,
      upper: 0.2,
    });
    const both = { unit: 'mm', quantity: 'length', nominal: '0 mm', tolerance: '0.5 mm', ...per };
    expect(limitsOf(specOf(both))).toEqual({ lower: -5, upper: 5 });
    const shorter = { ...both, over: '25 mm' };
    expect(limitsOf(specOf(shorter))).toEqual({ lower: -0.125, upper: 0.125 });
  });

  test('that are not there stay so, over whatever length was read', () => {
    const per = { unit: 'mm', quantity: 'length', per: '100 mm', over: '1 m' };
    expect(limitsOf(specOf(per))).toBeUndefined();
    expect(limitsOf(specOf({ ...per, nominal: '3 mm' }))).toBeUndefined();
  });

  test('on both sides change places where more of one unit is less of the other', () => {
    const turned = { quantity: 'consumption', unit: 'L/100km', max: '40 mpg(UK)' };
    const limits = limitsOf(specOf({ ...turned, min: '30 mpg(UK)' }));
    expect(limits?.lower).toBeCloseTo(282.480936331822 / 40, 10);
    expect(limits?.upper).toBeCloseTo(282.480936331822 / 30, 10);
    const most = limitsOf(specOf(turned));
    expect(most?.lower).toBeCloseTo(282.480936331822 / 40, 10);
    expect(most?.upper).toBeUndefined();
  });
});
