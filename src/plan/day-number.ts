import { addDays, type Day, daysBetween } from '../time/day.ts';

/** A calendar day counted from 1970-01-01, which is 0; plans count in it, since it adds and sorts as a number. */
export type DayNumber = number;

const FIRST = '1970-01-01' as Day;

/** The number of a day. */
export function dayNumber(day: Day): DayNumber {
  return daysBetween(FIRST, day);
}

/** The day of a number. */
export function dayOfNumber(number: DayNumber): Day {
  return addDays(FIRST, number);
}

/** 0 on Monday to 6 on Sunday (ISO 8601 begins the week on Monday); 1970-01-01 was a Thursday. */
export function weekdayOf(number: DayNumber): number {
  return (((number + 3) % 7) + 7) % 7;
}
