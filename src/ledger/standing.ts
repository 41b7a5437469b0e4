import type { Day } from '../time/day.ts';

/** When a row counts. Both are left out of a row that always stood as it does. */
export interface Standing {
  /** Day it was written down as a correction; before, the row that it replaces counted. */
  readonly since?: Day | undefined;
  /** Day from which another row, or nothing, counts in its place. */
  readonly until?: Day | undefined;
}

/** Whether a row counts on a day: it has happened, has been written down, and has not been replaced. */
export function standsOn(row: Standing & { readonly date?: Day | undefined }, day: Day): boolean {
  if (row.date !== undefined && row.date > day) return false;
  if (row.since !== undefined && row.since > day) return false;
  return row.until === undefined || row.until > day;
}

/** Whether no later row has replaced it. */
export function stillStands(row: Standing): boolean {
  return row.until === undefined;
}
