import type { Correction } from '../ledger/corrections.ts';
import { type Money, sum, zero } from '../money/money.ts';
import type { Minutes } from '../time/duration.ts';
import type { Project } from './types.ts';

/** What a correction did to the totals: what counts now less what counted before. */
export interface Effect {
  readonly money?: Money;
  readonly minutes?: Minutes;
}

/** The change that a correction made to money or hours; nothing for rows of other kinds. */
export function effectOf(project: Project, { kind, old, by }: Correction): Effect {
  if (kind === 'hours') {
    const minutes = (id: string | undefined) =>
      project.hours.find((row) => row.id === id)?.hours ?? 0;
    return { minutes: minutes(by) - minutes(old) };
  }
  if (kind !== 'costs') return {};
  const counted = (id: string | undefined): Money => {
    const row = project.costs.find((item) => item.id === id);
    return row?.inTotals ? row.counted : zero(project.currency);
  };
  const before = counted(old);
  return { money: sum([counted(by), { ...before, minor: 0 - before.minor }], project.currency) };
}
