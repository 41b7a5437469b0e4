import { expect, test } from 'vitest';
import {
  hoursByDay,
  hoursByWeek,
  mondayOf,
  withRunningTotal,
} from '../../src/hours/hours-by-time.ts';
import type { Day } from '../../src/time/day.ts';
import { plannedProject, weekly } from '../plan/planned-project.ts';

test('a week begins on Monday (ISO 8601)', () => {
  const days = ['2025-01-05', '2025-01-06', '2025-01-12', '1969-12-31'] as Day[];
  expect(days.map(mondayOf)).toEqual(['2024-12-30', '2025-01-06', '2025-01-06', '1969-12-29']);
});

test('weeks without work are there, with none', () => {
  const hours = [
    ...weekly('strip', '2025-01-05', ['2:00', '1:30']),
    ...weekly('clean', '2025-01-06', ['1:00']),
    ...weekly('paint', '2025-02-01', ['3:00']),
  ];
  const { now } = plannedProject({ hours });
  expect(hoursByWeek(now.hours).map(({ from, minutes }) => [from, minutes])).toEqual([
    ['2024-12-30', 120],
    ['2025-01-06', 150],
    ['2025-01-13', 0],
    ['2025-01-20', 0],
    ['2025-01-27', 180],
  ]);
  expect(withRunningTotal(hoursByWeek(now.hours)).map(({ running }) => running)).toEqual([
    ...[120, 270, 270, 270, 450],
  ]);
  expect(hoursByDay(now.hours).map(({ from }) => from)).toEqual([
    ...['2025-01-05', '2025-01-06', '2025-01-12', '2025-02-01'],
  ]);
});

test('no rows make no weeks', () => {
  expect(hoursByWeek([])).toEqual([]);
});
