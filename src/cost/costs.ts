import {
  type Breakdown,
  breakDown,
  type Figure,
  type FigureRow,
  type Grouping,
} from '../book/figure.ts';
import type { CostRecord, Rate } from '../model/kinds.ts';
import { convert, type Money, negate, sum, toMinor } from '../money/money.ts';

/** A cost row of the book: what was paid, and what it counts for in the project's currency. Credits are negative. */
export interface CostRow extends Omit<CostRecord, 'amount'>, FigureRow {
  /** As written on the receipt, with its sign. */
  readonly paid: Money;
  /** In the project's currency, with its sign. */
  readonly counted: Money;
  /** The recorded rate it was converted at, when the two differ. */
  readonly rate: Rate | undefined;
  /** Whether it is in the totals: a shop tool may be out by rule of the project. */
  readonly inTotals: boolean;
}

/** What turns a record into a row. */
export interface CostContext {
  readonly currency: string;
  readonly tools: 'in' | 'out';
  readonly rates: readonly Rate[];
}

/**
 * A cost record with its sign, its value in the project's currency at the newest rate on or before its day, and whether it counts.
 * Undefined when its amount has no currency or no rate, which the check has said already.
 */
export function costRow(
  record: CostRecord,
  { currency, tools, rates }: CostContext,
): CostRow | undefined {
  const { amount, ...rest } = record;
  const paidIn = amount.currency ?? currency;
  const size = toMinor(amount.decimal, paidIn);
  const rate = rates.findLast(
    ({ from, to, date }) => from === paidIn && to === currency && date <= record.date,
  );
  if (size === undefined || (paidIn !== currency && rate === undefined)) return undefined;

  const paid = record.kind === 'payment' ? size : negate(size);
  const counted =
    rate === undefined || paidIn === currency ? paid : convert(paid, rate.rate, currency);
  return {
    ...rest,
    paid,
    counted,
    rate: paidIn === currency ? undefined : rate,
    inTotals: tools === 'in' || record.category !== 'tool',
  };
}

/** Money of the rows that count, credits taken off. */
export function sumCosts(rows: readonly CostRow[], currency: string): Figure<Money, CostRow> {
  const counting = rows.filter(({ inTotals }) => inTotals);
  const value = sum(
    counting.map(({ counted }) => counted),
    currency,
  );
  const left = rows.length - counting.length;
  const credits = counting.filter(({ kind }) => kind !== 'payment').length;
  const notes = [
    credits > 0 ? `${credits} of them credits` : '',
    left > 0 ? `${left} shop-tool rows left out` : '',
  ].filter(Boolean);
  return {
    value,
    rows: counting,
    how: [
      `sum of ${counting.length} cost ${counting.length === 1 ? 'row' : 'rows'}`,
      ...notes,
    ].join(', '),
  };
}

/** Money broken down by category, phase or source. */
export function costsBy(
  rows: readonly CostRow[],
  currency: string,
  grouping: Grouping<CostRow>,
): Breakdown<Money, CostRow> {
  return breakDown(
    rows.filter(({ inTotals }) => inTotals),
    grouping,
    (group) => sumCosts(group, currency),
  );
}

/** Rows with the total up to and with each; a row that is out of the totals leaves it as it was. */
export function runningTotals(
  rows: readonly CostRow[],
  currency: string,
): { readonly row: CostRow; readonly total: Money }[] {
  let total: Money = { minor: 0, currency };
  return rows.map((row) => {
    if (row.inTotals) total = sum([total, row.counted], currency);
    return { row, total };
  });
}
