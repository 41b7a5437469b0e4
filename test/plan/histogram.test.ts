import { expect, test } from 'vitest';
import { histogramOf } from '../../src/plan/forecast-summary.ts';

test('one draw in a thousand that takes decades leaves the bars of the others as they were', () => {
  const days = Float64Array.from({ length: 1000 }, (_, index) => 100 + (index % 24));
  const bars = histogramOf(days);
  days[5] = 9000;
  const withOne = histogramOf(days);
  expect(withOne.map(({ from, to }) => [from, to])).toEqual(bars.map(({ from, to }) => [from, to]));
  expect(withOne.at(-1)?.draws).toBe((bars.at(-1)?.draws ?? 0) + 1);
});
