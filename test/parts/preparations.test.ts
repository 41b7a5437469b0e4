import { expect, test } from 'vitest';
import { overdueReturns, preparationsOn } from '../../src/parts/preparations.ts';
import { workshopOn } from './workshop.ts';

const lateOn = (day: string) =>
  overdueReturns(workshopOn(day)).map(({ row, overdue }) => `${row.id} ${overdue}`);

test('a return is overdue from the day after it was due until the day it is back', () => {
  expect(lateOn('2025-02-20')).toEqual([]);
  expect(lateOn('2025-02-21')).toEqual(['w-1 1']);
  expect(lateOn('2025-03-01')).toEqual(['w-1 9']);
  expect(lateOn('2025-03-02')).toEqual([]);
  expect(lateOn('2025-06-30')).toEqual(['w-2 56']);
});

test('a preparation took the days until it was back, and so far those until the day', () => {
  const took = preparationsOn(workshopOn('2025-05-01')).map(({ row, days }) => [row.id, days]);
  expect(took).toEqual([
    ['w-1', 20],
    ['w-3', 15],
    ['w-2', 6],
  ]);
});

test('where something was sent is not told', () => {
  expect(JSON.stringify(preparationsOn(workshopOn('2025-06-30')))).not.toContain('A yard');
});
