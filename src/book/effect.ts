import type { CostRow } from '../cost/cost-row.ts';
import type { Correction } from '../ledger/corrections.ts';
import { type Money, negate, sum } from '../money/money.ts';
import type { Minutes } from '../time/duration.ts';
import type { Project } from './types.ts';

/** What a correction did to the totals: what counts now less what counted before. */
export interface Effect {
  readonly money?: Money;
  readonly minutes?: Minutes;
  /** Set where the change would tell an amount that is not published. */
  readonly withheld?: true;
}

/** The change that a correction made to money or hours; nothing for rows of other kinds. */
export function effectOf(project: Project, correction: Correction): Effect {
  const { kind, old, by } = correction;
  if (kind === 'rates') return { money: effectOfRate(project, correction) };
  if (kind === 'hours') {
    const minutes = (id: string | undefined) =>
      project.hours.find((row) => row.id === id)?.hours ?? 0;
    return { minutes: minutes(by) - minutes(old) };
  }
  if (kind !== 'costs') return {};

  // A row is several when its rate was corrected: the last was replaced, and the first came in its place.
  const before = project.costs.findLast((row) => row.id === old);
  const after = by === undefined ? undefined : project.costs.find((row) => row.id === by);
  if (before === undefined || (by !== undefined && after === undefined)) return { withheld: true };
  return { money: change(project, [before], after ? [after] : []) };
}

/** A rate changes every row that was converted at it. */
function effectOfRate(project: Project, { old, on }: Correction): Money {
  const before = project.costs.filter(({ rate, until }) => rate?.id === old && until === on);
  const ids = new Set(before.map(({ id }) => id));
  const after = project.costs.filter(({ id, since }) => ids.has(id) && since === on);
  return change(project, before, after);
}

function change(
  { currency }: Project,
  before: readonly CostRow[],
  after: readonly CostRow[],
): Money {
  const counted = (rows: readonly CostRow[]) =>
    rows.flatMap((row) => (row.inTotals ? [row.counted] : []));
  return sum([...counted(after), ...counted(before).map(negate)], currency);
}
