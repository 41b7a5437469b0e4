import fc from 'fast-check';
import type { CalendarPlan } from '../../src/plan/calendar.ts';
import { type DayNumber, dayNumber } from '../../src/plan/day-number.ts';
import type { Day } from '../../src/time/day.ts';

/** The number of a day written as text. */
export const numberOf = (text: string): DayNumber => dayNumber(text as Day);

/** Tuesday and Thursday evenings of two hours, Saturdays of six. */
export const evenings: CalendarPlan = {
  week: [0, 120, 0, 120, 0, 360, 0],
  away: [],
  changed: [],
};

const minutes = fc.constantFrom(0, 0, 30, 90, 120, 480);

/** Days of some ten years, leap days and century rule in reach. */
export const someDay = fc.integer({ min: numberOf('2096-01-01'), max: numberOf('2106-01-01') });

/** Calendars with stretches away, which may overlap, and changed days, which may lie in them. */
export const calendarPlans: fc.Arbitrary<CalendarPlan> = fc.record({
  week: fc.tuple(minutes, minutes, minutes, minutes, minutes, minutes, minutes),
  away: fc.array(
    fc
      .tuple(someDay, fc.integer({ min: -2, max: 60 }))
      .map(([from, days]) => ({ from, to: from + days })),
    { maxLength: 8 },
  ),
  changed: fc.array(fc.record({ day: someDay, minutes }), { maxLength: 8 }),
});
