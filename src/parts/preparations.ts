import type { PreparationRow } from '../book/decisions.ts';
import type { View } from '../book/types.ts';
import { standsOn } from '../ledger/standing.ts';
import { type Day, daysBetween } from '../time/day.ts';

export type PreparationKind = PreparationRow['kind'];

/** A preparation as it was known on a day. Where it was done is private and not in it. */
export interface PreparationOnDay {
  readonly row: Omit<PreparationRow, 'place' | 'back'>;
  /** Day it was done or came back; undefined while it goes on. */
  readonly back: Day | undefined;
  /** Days from its date until it was back, or until the day. */
  readonly days: number;
  /** Days past the day it was due; undefined when it is back, or not due yet. */
  readonly overdue: number | undefined;
}

/** Preparations that had begun by the view's day, in order of date. */
export function preparationsOn({ project, day }: View): readonly PreparationOnDay[] {
  return project.preparations
    .filter((row) => standsOn(row, day))
    .map((row) => preparationOn(row, day));
}

/** A preparation as it was known at the end of a day. */
export function preparationOn(
  { place: _, back: written, ...row }: PreparationRow,
  day: Day,
): PreparationOnDay {
  const back = written !== undefined && written <= day ? written : undefined;
  const isLate = back === undefined && row.due !== undefined && row.due < day;
  return {
    row,
    back,
    days: daysBetween(row.date, back ?? day),
    overdue: isLate && row.due !== undefined ? daysBetween(row.due, day) : undefined,
  };
}

/** What was sent out and should have been back before the view's day, the longest overdue first. */
export function overdueReturns(view: View): readonly PreparationOnDay[] {
  return preparationsOn(view)
    .filter(({ row, overdue }) => row.out && overdue !== undefined)
    .sort((a, b) => (b.overdue ?? 0) - (a.overdue ?? 0));
}
