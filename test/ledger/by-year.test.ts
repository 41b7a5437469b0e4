import { expect, test } from 'vitest';
import { byYear, yearsOf } from '../../src/ledger/by-year.ts';
import type { Day } from '../../src/time/day.ts';

const rows = (...days: string[]) =>
  days.map((date, index) => ({ row: { date: date as Day }, total: 10 * (index + 1) }));

test('byYear carries the total of one year to the next, over a year without rows', () => {
  const years = byYear(rows('2023-12-31', '2024-01-01', '2024-12-31', '2026-02-02'));
  expect(years.map(({ year, before, after, rows }) => [year, before, after, rows.length])).toEqual([
    ['2023', undefined, 10, 1],
    ['2024', 10, 30, 2],
    ['2026', 30, 40, 1],
  ]);
  expect(yearsOf(rows('2023-12-31', '2024-01-01', '2024-05-05').map(({ row }) => row))).toEqual([
    '2023',
    '2024',
  ]);
  expect(byYear([])).toEqual([]);
});
