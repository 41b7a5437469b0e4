import type { Figure } from '../book/figure.ts';
import type { View } from '../book/types.ts';
import type { Money } from '../money/money.ts';
import type { CostRow } from './cost-row.ts';
import { shareOut, sumCosts } from './costs.ts';

/** What was paid for a part by the view's day: the rows that name it alone, and its shares of those that name several. */
export function costsOfPart(view: View, id: string): Figure<Money, CostRow> {
  const rows = shareOut(view.costs, ({ parts }) => parts)
    .filter(({ key }) => key === id)
    .map(({ row }) => row);
  return sumCosts(rows, view.project.currency);
}
