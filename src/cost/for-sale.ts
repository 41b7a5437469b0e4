import type { Figure, FigureRow } from '../book/figure.ts';
import type { View } from '../book/types.ts';
import { type Money, sum } from '../money/money.ts';
import { stated } from './stated.ts';

/** A part that stands for sale, since `date`. */
export interface ForSaleRow extends FigureRow {
  readonly asking: Money | undefined;
}

/** Parts of a source that stand for sale on the day of a view, and what is asked for them: an estimate. */
export function forSale(view: View, source: string): Figure<Money, ForSaleRow> {
  const { currency } = view.project;
  const rows = view.parts.flatMap(({ part, state }): ForSaleRow[] => {
    const offered = part.source === source && ['noted', 'in-hand'].includes(state);
    if (!offered || part.forSale === undefined || part.forSale > view.day) return [];
    const asking = stated(part.asking, currency);
    return [{ id: part.id, date: part.forSale, what: part.name, asking }];
  });
  const priced = rows.flatMap(({ asking }) => asking ?? []);
  return {
    value: sum(priced, currency),
    rows,
    how: ({ money }) => money.sums.askingPrices(priced.length),
  };
}
