import type { Project } from '../book/types.ts';
import { byYear } from '../ledger/by-year.ts';
import { showDuration } from '../time/duration.ts';
import { runningHours } from './hours.ts';

/** The years of the hours: their rows, what they add, and the total after them. */
export function hoursYears({ hours }: Project) {
  return byYear(runningHours(hours)).map(({ year, rows, before = 0, after }) => ({
    year,
    ids: rows.map(({ row }) => row.id),
    added: showDuration(after - before),
    after: showDuration(after),
  }));
}
