import { describe, expect, test } from 'vitest';
import { workingCalendar } from '../../src/plan/calendar.ts';
import {
  type Budgeted,
  earnedSoFar,
  plannedBy,
  plannedCurve,
} from '../../src/plan/planned-value.ts';
import { evenings, numberOf } from './calendars.ts';

const calendar = workingCalendar(evenings);
const monday = numberOf('2025-03-03');
/** Two weeks of ten hours for 40 hours, and a week after it for 10. */
const phases: readonly Budgeted[] = [
  { from: monday, to: monday + 13, budget: 2400, state: 'under way' },
  { from: monday + 14, to: monday + 20, budget: 600, state: 'not started' },
];

describe('planned value', () => {
  test('grows with the working time between the planned days', () => {
    // Nothing on Monday, two of twenty hours on Tuesday, ten by the first Sunday.
    expect(plannedBy(monday, phases, calendar)).toBe(0);
    expect(plannedBy(monday + 1, phases, calendar)).toBe(240);
    expect(plannedBy(monday + 6, phases, calendar)).toBe(1200);
    expect(plannedBy(monday + 13, phases, calendar)).toBe(2400);
    expect(plannedBy(monday + 99, phases, calendar)).toBe(3000);
  });

  test('grows with the days where the calendar has no time', () => {
    const away = workingCalendar({ ...evenings, away: [{ from: monday, to: monday + 13 }] });
    expect(plannedBy(monday + 6, phases, away)).toBe(1200);
  });

  test('is listed by periods up to all of the budget', () => {
    expect(plannedCurve(phases, 7, calendar)).toEqual([1200, 2400, 3000]);
    expect(plannedCurve(phases, 14, calendar)).toEqual([2400, 3000]);
    expect(plannedCurve([], 7, calendar)).toEqual([]);
  });
});

test('a phase earns half of its budget when it is begun and the rest when it is finished', () => {
  expect(earnedSoFar(phases)).toBe(1200);
  expect(earnedSoFar(phases.map((phase) => ({ ...phase, state: 'finished' })))).toBe(3000);
});
