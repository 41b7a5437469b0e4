import type { Figure, FigureRow } from '../book/figure.ts';
import { type Money, sum } from '../money/money.ts';

/** A row behind a sum of the budget, with what it adds. */
export interface AmountRow extends FigureRow {
  readonly amount: Money;
  /** How this row's amount came about, where it is not simply what the row says. */
  readonly note?: string | undefined;
}

/** A sum of the budget, which opens to its rows. */
export type AmountFigure = Figure<Money, AmountRow>;

/** An amount, and how low and how high it may come out; low ≤ middle ≤ high. */
export interface MoneyRange {
  readonly low: Money;
  readonly middle: Money;
  readonly high: Money;
}

/** The sum of rows in one currency; `what` is what one of them is called, in the singular. */
export function sumAmounts(
  rows: readonly AmountRow[],
  currency: string,
  what: string,
): AmountFigure {
  const value = sum(
    rows.map(({ amount }) => amount),
    currency,
  );
  return { value, rows, how: `sum of ${rows.length} ${what}${rows.length === 1 ? '' : 's'}` };
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
