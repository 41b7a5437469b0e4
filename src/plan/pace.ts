import type { WorkingCalendar } from './calendar.ts';
import type { DayNumber } from './day-number.ts';

/** Work done on a day. */
export interface WorkedMinutes {
  readonly day: DayNumber;
  readonly minutes: number;
}

/** One of the last weeks: seven days, the last of them `to`. */
export interface PaceWeek {
  readonly to: DayNumber;
  /** Minutes worked. */
  readonly worked: number;
  /** Minutes it would have been without days away: worked, over the share of the week there was. */
  readonly minutes: number;
}

// A week with less than half of its time says little about a whole one.
const LEAST_SHARE = 0.5;

/**
 * The last weeks up to and including a day, oldest first. Weeks before the first work are none of it, and weeks mostly away are
 * left out, since the forecast takes days away from the calendar. A free week with no work is a week of pace 0.
 */
export function hoursPace(
  rows: readonly WorkedMinutes[],
  { asOf, weeks, calendar }: { asOf: DayNumber; weeks: number; calendar: WorkingCalendar },
): PaceWeek[] {
  const past = rows.filter(({ day }) => day <= asOf);
  const first = past.reduce((least, { day }) => Math.min(least, day), Number.POSITIVE_INFINITY);
  const worked = new Float64Array(weeks);
  for (const { day, minutes } of past) {
    const back = Math.floor((asOf - day) / 7);
    if (back < weeks) worked[back] = (worked[back] ?? 0) + minutes;
  }
  return [...worked]
    .map((minutes, back) => ({ to: asOf - 7 * back, worked: minutes }))
    .filter(({ to }) => to >= first)
    .map((week) => ({ ...week, share: shareOf(week.to, calendar) }))
    .filter(({ share }) => share >= LEAST_SHARE)
    .map(({ to, worked, share }) => ({ to, worked, minutes: worked / share }))
    .reverse();
}

/** How much of its usual time the week that ends on a day has; a calendar with no time at all changes nothing. */
function shareOf(to: DayNumber, { weekMinutes, minutesBetween }: WorkingCalendar): number {
  return weekMinutes === 0 ? 1 : minutesBetween(to - 6, to + 1) / weekMinutes;
}
