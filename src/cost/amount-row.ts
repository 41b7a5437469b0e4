import type { Figure, FigureRow } from '../book/figure.ts';
import { type Money, sum } from '../money/money.ts';
import type { Said } from '../words/said.ts';
import type { Words } from '../words/words.ts';

/** A row behind a sum of the budget, with what it adds. */
export interface AmountRow extends FigureRow {
  readonly amount: Money;
  /** How this row's amount came about, where it is not simply what the row says. */
  readonly note?: Said | undefined;
  /** What a reader sees in place of what the row says, where it says nothing of its own. */
  readonly title?: Said | undefined;
}

/** What the rows of a sum of the budget are. */
export type AmountKind = 'budgetLines' | 'costRows' | 'estimates' | 'openOrders' | 'orders';

/** A sum of the budget, which opens to its rows. */
export type AmountFigure = Figure<Money, AmountRow>;

/** An amount, and how low and how high it may come out; low ≤ middle ≤ high. */
export interface MoneyRange {
  readonly low: Money;
  readonly middle: Money;
  readonly high: Money;
}

/** The sum of rows of one kind in one currency. */
export function sumAmounts(
  rows: readonly AmountRow[],
  currency: string,
  kind: AmountKind,
): AmountFigure {
  const value = sum(
    rows.map(({ amount }) => amount),
    currency,
  );
  return { value, rows, how: ({ money }: Words) => money.sums[kind](rows.length) };
}

/** Adds ranges end by end. */
export function addRanges(ranges: readonly MoneyRange[], currency: string): MoneyRange {
  const end = (which: keyof MoneyRange) =>
    sum(
      ranges.map((range) => range[which]),
      currency,
    );
  return { low: end('low'), middle: end('middle'), high: end('high') };
}

/** An amount that can come out one way only. */
export function certain(amount: Money): MoneyRange {
  return { low: amount, middle: amount, high: amount };
}
