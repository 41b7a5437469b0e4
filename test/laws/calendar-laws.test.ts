import fc from 'fast-check';
import { expect, test } from 'vitest';
import { workingCalendar } from '../../src/plan/calendar.ts';
import { weekdayOf } from '../../src/plan/day-number.ts';
import { calendarPlans, someDay } from '../plan/calendars.ts';

const work = fc.integer({ min: 1, max: 20_000 });

test('minutes of two stretches that follow each other add up to those of the whole', () => {
  fc.assert(
    fc.property(calendarPlans, someDay, someDay, someDay, (plan, one, two, three) => {
      const { minutesBetween } = workingCalendar(plan);
      expect(minutesBetween(one, two) + minutesBetween(two, three)).toBe(
        minutesBetween(one, three),
      );
    }),
  );
});

test('work ends on the first day by whose end there was time for it, and that day has work', () => {
  fc.assert(
    fc.property(calendarPlans, someDay, work, (plan, start, minutes) => {
      const { finishOf, minutesBetween, minutesOn } = workingCalendar(plan);
      const finish = finishOf(start, minutes);
      fc.pre(finish !== undefined);
      expect(minutesBetween(start, finish + 1)).toBeGreaterThanOrEqual(minutes);
      expect(minutesBetween(start, finish)).toBeLessThan(minutes);
      expect(minutesOn(finish)).toBeGreaterThan(0);
    }),
  );
});

test('work begun on the latest start is done in time, and a day later it is not', () => {
  fc.assert(
    fc.property(calendarPlans, someDay, work, (plan, finish, minutes) => {
      const { startOf, finishOf } = workingCalendar(plan);
      const start = startOf(finish, minutes);
      fc.pre(start !== undefined);
      expect(finishOf(start, minutes)).toBeLessThanOrEqual(finish);
      expect(finishOf(start + 1, minutes) ?? Number.POSITIVE_INFINITY).toBeGreaterThan(finish);
    }),
  );
});

test('a week away never brings a finish forward', () => {
  fc.assert(
    fc.property(calendarPlans, someDay, someDay, work, (plan, start, from, minutes) => {
      const more = { ...plan, away: [...plan.away, { from, to: from + 6 }] };
      const [finish, later] = [plan, more].map(
        (one) => workingCalendar(one).finishOf(start, minutes) ?? Number.POSITIVE_INFINITY,
      );
      expect(later).toBeGreaterThanOrEqual(finish as number);
    }),
  );
});

test('a day’s weekday is the one of the Date object', () => {
  fc.assert(
    fc.property(fc.integer({ min: -50_000, max: 80_000 }), (day) => {
      expect((weekdayOf(day) + 1) % 7).toBe(new Date(day * 86_400_000).getUTCDay());
    }),
  );
});
