import type { Day } from '../time/day.ts';

/** A row and the running total after it. */
export interface RunningRow<Row, Total> {
  readonly row: Row;
  readonly total: Total;
}

/** The rows of one calendar year, and what the running total was before and is after them. */
export interface LedgerYear<Row, Total> {
  readonly year: string;
  readonly rows: readonly RunningRow<Row, Total>[];
  /** Absent in the first year. */
  readonly before?: Total;
  readonly after: Total;
}

/**
 * A ledger in pages of a calendar year each, from rows in order of date. A row's year never changes, so neither does its address, however
 * long the ledger grows.
 */
export function byYear<Row extends { readonly date: Day }, Total>(
  rows: readonly RunningRow<Row, Total>[],
): LedgerYear<Row, Total>[] {
  const grouped = Map.groupBy(rows, ({ row }) => yearOf(row.date));
  let before: Total | undefined;
  return [...grouped].map(([year, ofYear]) => {
    const after = (ofYear.at(-1) as RunningRow<Row, Total>).total;
    const carried = before === undefined ? {} : { before };
    before = after;
    return { year, rows: ofYear, ...carried, after };
  });
}

/** The calendar year of a day. */
export const yearOf = (day: Day): string => day.slice(0, 4);

/** The calendar years that rows in order of date lie in. */
export const yearsOf = (rows: readonly { readonly date: Day }[]): string[] => [
  ...new Set(rows.map(({ date }) => yearOf(date))),
];
