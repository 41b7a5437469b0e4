import {
  type Breakdown,
  breakDown,
  type Figure,
  type FigureRow,
  type Grouping,
} from '../book/figure.ts';
import { type Standing, stillStands } from '../ledger/standing.ts';
import type { HoursRow } from '../model/kinds.ts';
import type { Minutes } from '../time/duration.ts';

/** An hours row of the book: the person is always named. */
export interface WorkedRow extends HoursRow, FigureRow, Standing {
  readonly who: string;
}

/** Hours of the rows given, in minutes. */
export function sumHours(rows: readonly WorkedRow[]): Figure<Minutes, WorkedRow> {
  const value = rows.reduce((minutes, row) => minutes + row.hours, 0);
  return { value, rows, how: ({ plan }) => plan.hours.sum(rows.length) };
}

/** Hours broken down by phase, kind of work or person. */
export function hoursBy(
  rows: readonly WorkedRow[],
  grouping: Grouping<WorkedRow>,
): Breakdown<Minutes, WorkedRow> {
  return breakDown(rows, grouping, sumHours);
}

/** Rows with the minutes up to and with each. */
export function runningHours(
  rows: readonly WorkedRow[],
): { readonly row: WorkedRow; readonly total: Minutes }[] {
  let total = 0;
  return rows.map((row) => {
    if (stillStands(row)) total += row.hours;
    return { row, total };
  });
}
