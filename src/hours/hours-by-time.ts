import { addDays, type Day, daysBetween } from '../time/day.ts';
import type { Minutes } from '../time/duration.ts';
import type { WorkedRow } from './hours.ts';

/** Time worked in a week, Monday to Sunday, or on a day. */
export interface WorkedSpan {
  /** Its first day. */
  readonly from: Day;
  readonly minutes: Minutes;
  readonly rows: readonly WorkedRow[];
}

const A_MONDAY = '1970-01-05' as Day;

/** Monday of the week of a day (ISO 8601). */
export function mondayOf(day: Day): Day {
  return addDays(day, -(((daysBetween(A_MONDAY, day) % 7) + 7) % 7));
}

/** Every week from the first row's to the last's, those without work too. */
export function hoursByWeek(rows: readonly WorkedRow[]): WorkedSpan[] {
  const weeks = groupBy(rows, ({ date }) => mondayOf(date));
  const [first, last] = [rows[0], rows.at(-1)].map((row) => row && mondayOf(row.date));
  if (first === undefined || last === undefined) return [];
  return Array.from({ length: daysBetween(first, last) / 7 + 1 }, (_, index) => {
    const from = addDays(first, 7 * index);
    return spanOf(from, weeks.get(from) ?? []);
  });
}

/** Weeks or days, each with what was worked from the first of them to its end. */
export function withRunningTotal(
  spans: readonly WorkedSpan[],
): (WorkedSpan & { readonly running: Minutes })[] {
  let running = 0;
  return spans.map((span) => {
    running += span.minutes;
    return { ...span, running };
  });
}

/** The days that were worked, in order. */
export function hoursByDay(rows: readonly WorkedRow[]): WorkedSpan[] {
  return [...groupBy(rows, ({ date }) => date)].map(([day, some]) => spanOf(day, some));
}

function spanOf(from: Day, rows: readonly WorkedRow[]): WorkedSpan {
  return { from, rows, minutes: rows.reduce((sum, { hours }) => sum + hours, 0) };
}

function groupBy(
  rows: readonly WorkedRow[],
  keyOf: (row: WorkedRow) => Day,
): Map<Day, WorkedRow[]> {
  const groups = new Map<Day, WorkedRow[]>();
  for (const row of rows) groups.set(keyOf(row), [...(groups.get(keyOf(row)) ?? []), row]);
  return groups;
}
