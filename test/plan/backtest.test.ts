import { expect, test } from 'vitest';
import { backtest } from '../../src/plan/backtest.ts';

test('a forecast holds the finish from its first to its last day, and one made afterwards does not count', () => {
  const forecasts = [
    { asOf: 10, low: 100, high: 120 },
    { asOf: 20, low: 80, high: 100 },
    { asOf: 30, low: 101, high: 130 },
    { asOf: 40, low: 60, high: 99 },
    { asOf: 100, low: 100, high: 100 },
  ];
  expect(backtest(forecasts, 100)).toEqual({ held: 2, missedEarly: 1, missedLate: 1, share: 0.5 });
});

test('without a forecast before the finish there is no share', () => {
  expect(backtest([], 100).share).toBeUndefined();
});
