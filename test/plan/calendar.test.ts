import { describe, expect, test } from 'vitest';
import { workingCalendar } from '../../src/plan/calendar.ts';
import { evenings, numberOf } from './calendars.ts';

// 2025-03-03 is a Monday; evenings on Tuesday and Thursday of two hours, Saturdays of six.
const monday = numberOf('2025-03-03');
const calendar = workingCalendar(evenings);

describe('a working calendar of evenings and Saturdays', () => {
  test.each([
    { minutes: 0, finish: '2025-03-03' },
    { minutes: 120, finish: '2025-03-04' },
    { minutes: 121, finish: '2025-03-06' },
    { minutes: 600, finish: '2025-03-08' },
    { minutes: 601, finish: '2025-03-11' },
    { minutes: 600 * 520, finish: '2035-02-17' },
  ])('finishes $minutes minutes begun on a Monday on $finish', ({ minutes, finish }) => {
    expect(calendar.finishOf(monday, minutes)).toBe(numberOf(finish));
  });

  test('begins six hours that end on a Sunday on the Saturday, and a minute more on the Thursday', () => {
    const sunday = numberOf('2025-03-09');
    expect(calendar.startOf(sunday, 360)).toBe(numberOf('2025-03-08'));
    expect(calendar.startOf(sunday, 361)).toBe(numberOf('2025-03-06'));
  });

  test('skips weeks away that overlap, and works a changed day in the middle of them', () => {
    const away = [
      { from: monday, to: monday + 9 },
      { from: monday + 5, to: monday + 13 },
    ];
    const changed = [{ day: monday + 6, minutes: 30 }];
    const other = workingCalendar({ ...evenings, away, changed });
    expect(other.minutesBetween(monday, monday + 14)).toBe(30);
    expect(other.minutesOn(monday + 6)).toBe(30);
    expect(other.finishOf(monday, 31)).toBe(numberOf('2025-03-18'));
  });

  test('has no finish when there is never time', () => {
    const never = workingCalendar({ ...evenings, week: [0, 0, 0, 0, 0, 0, 0] });
    expect(never.finishOf(monday, 1)).toBeUndefined();
    expect(never.startOf(monday, 1)).toBeUndefined();
  });
});
