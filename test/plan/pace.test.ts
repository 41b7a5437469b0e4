import { describe, expect, test } from 'vitest';
import { workingCalendar } from '../../src/plan/calendar.ts';
import { hoursPace } from '../../src/plan/pace.ts';
import { stretchesOf } from '../../src/plan/stretches.ts';
import { evenings, numberOf } from './calendars.ts';

const sunday = numberOf('2025-03-30');
const rows = [
  { day: sunday - 22, minutes: 300 },
  { day: sunday - 8, minutes: 200 },
  { day: sunday - 7, minutes: 50 },
  { day: sunday, minutes: 90 },
  { day: sunday + 1, minutes: 999 },
];
const paceWith = (away: { from: number; to: number }[], weeks = 8) =>
  hoursPace(rows, { asOf: sunday, weeks, calendar: workingCalendar({ ...evenings, away }) });

describe('the pace', () => {
  test('is minutes of weeks that end on the day, from the first work on, idle ones included', () => {
    expect(paceWith([]).map(({ minutes }) => minutes)).toEqual([300, 0, 250, 90]);
    expect(paceWith([], 2).map(({ to }) => sunday - to)).toEqual([7, 0]);
  });

  test('leaves out a week away, since the calendar of the weeks to come has days away too', () => {
    const weeks = paceWith([{ from: sunday - 20, to: sunday - 14 }]);
    expect(weeks.map(({ minutes }) => minutes)).toEqual([300, 250, 90]);
  });

  test('counts a week with a day away for what a whole one would have been', () => {
    // The Tuesday away takes two of ten hours.
    const tuesday = sunday - 5;
    expect(paceWith([{ from: tuesday, to: tuesday }]).at(-1)).toMatchObject({
      worked: 90,
      minutes: 90 / 0.8,
    });
  });

  test('is nothing before the first work', () => {
    expect(hoursPace([], { asOf: sunday, weeks: 8, calendar: workingCalendar(evenings) })).toEqual(
      [],
    );
  });
});

test('days worked become stretches, open where nothing was done for more than a week', () => {
  expect(stretchesOf([20, 1, 8, 9, 17, 33])).toEqual([
    { from: 1, to: 9 },
    { from: 17, to: 20 },
    { from: 33, to: 33 },
  ]);
});
