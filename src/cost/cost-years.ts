import type { Project } from '../book/types.ts';
import { byYear } from '../ledger/by-year.ts';
import { negate, showMoney, sum } from '../money/money.ts';
import { runningTotals } from './costs.ts';

/** A year of a ledger: its rows, what they add, and the total after them. */
export interface ShownYear {
  readonly year: string;
  readonly ids: readonly string[];
  readonly added: string;
  readonly after: string;
}

/** The years of the costs, a row that is several by its rate once. */
export function costYears({ costs, currency }: Project, language: string): ShownYear[] {
  return byYear(runningTotals(costs, currency)).map(({ year, rows, before, after }) => ({
    year,
    ids: [...new Set(rows.map(({ row }) => row.id))],
    added: showMoney(before ? sum([after, negate(before)], currency) : after, language),
    after: showMoney(after, language),
  }));
}
