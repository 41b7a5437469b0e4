import type { CostRow } from '../cost/cost-row.ts';
import type { WorkedRow } from '../hours/hours.ts';
import { type Standing, standsOn, stillStands } from '../ledger/standing.ts';
import type { Day } from '../time/day.ts';
import type { Entry, Project } from './types.ts';

/** What was written down after a day about rows of that day or before. */
export interface LaterSaid<Row> {
  /** Rows that counted on the day and no longer do. */
  readonly gone: readonly Row[];
  /** Rows dated by the day that count now and did not then. */
  readonly come: readonly Row[];
}

/** An entry whose totals are not those that the ledger page runs up to by its day, since rows were corrected later. */
export interface BelievedEntry {
  readonly entry: Entry;
  readonly hours: LaterSaid<WorkedRow>;
  readonly costs: LaterSaid<CostRow>;
}

/** What was said later about rows up to a day. */
export function saidLater<Row extends Standing & { readonly date: Day }>(
  rows: readonly Row[],
  day: Day,
): LaterSaid<Row> {
  const known = rows.filter(({ date }) => date <= day);
  return {
    gone: known.filter((row) => standsOn(row, day) && !stillStands(row)),
    come: known.filter((row) => !standsOn(row, day) && stillStands(row)),
  };
}

/** The entries that show other totals than the ledger pages of today, in order. */
export function believedEntries(project: Project): readonly BelievedEntry[] {
  return project.entries
    .map((entry) => believedIn(project, entry))
    .filter(({ hours, costs }) => differs(hours) || differs(costs));
}

/** What was said later about the rows behind one entry's totals. */
export function believedIn(project: Project, entry: Entry): BelievedEntry {
  const counting = project.costs.filter(({ inTotals }) => inTotals);
  return {
    entry,
    hours: saidLater(project.hours, entry.date),
    costs: saidLater(counting, entry.date),
  };
}

/** Whether anything was said later. */
export function differs({ gone, come }: LaterSaid<unknown>): boolean {
  return gone.length + come.length > 0;
}
