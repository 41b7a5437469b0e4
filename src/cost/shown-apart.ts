import type { Figure } from '../book/figure.ts';
import type { View } from '../book/types.ts';
import { type Money, sum } from '../money/money.ts';
import { type CostRow, isMoney } from './cost-row.ts';
import { type LabourFigure, labourOf } from './labour.ts';

/** Value that stands beside the money spent. */
export interface ShownApart {
  readonly gifts: Figure<Money, CostRow>;
  readonly trades: Figure<Money, CostRow>;
  /** Shop tools that the project leaves out. */
  readonly toolsOut: Figure<Money, CostRow>;
  /** What is for other work: the rest of rows that count with a share. */
  readonly elsewhere: Figure<Money, CostRow>;
  readonly labour: LabourFigure | undefined;
}

/** What is shown apart from the totals on the day of a view. */
export function shownApart(view: View): ShownApart {
  const { currency, info } = view.project;
  const figure = (
    test: (row: CostRow) => boolean,
    moneyOf: (row: CostRow) => Money,
  ): Figure<Money, CostRow> => {
    const rows = view.costs.filter(test).map((row) => ({ ...row, counted: moneyOf(row) }));
    const value = sum(
      rows.map(({ counted }) => counted),
      currency,
    );
    return { value, rows, how: ({ money }) => money.sums.costRows(rows.length) };
  };
  const counted = (row: CostRow) => row.counted;
  return {
    gifts: figure(({ kind }) => kind === 'gift', counted),
    trades: figure(({ kind }) => kind === 'trade', counted),
    toolsOut: figure(({ kind, inTotals }) => isMoney(kind) && !inTotals, counted),
    elsewhere: figure(
      (row) => row.inTotals && row.elsewhere.minor !== 0,
      (row) => row.elsewhere,
    ),
    labour: labourOf(view.hours, info, currency),
  };
}
