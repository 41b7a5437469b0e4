import { type Breakdown, breakDown, type Figure, type Grouping } from '../book/figure.ts';
import { stillStands } from '../ledger/standing.ts';
import { type Money, sum } from '../money/money.ts';
import type { Said } from '../words/said.ts';
import { type CostRow, isCredit, isMoney } from './cost-row.ts';
import type { Share } from './shares.ts';

/** Money of the rows that count, credits taken off. */
export function sumCosts(rows: readonly CostRow[], currency: string): Figure<Money, CostRow> {
  const counting = rows.filter(({ inTotals }) => inTotals);
  const value = sum(
    counting.map(({ counted }) => counted),
    currency,
  );
  return { value, rows: counting, how: howSummed(counting, rows.length - counting.length) };
}

/** How many rows were added up, and what is special about some of them. */
function howSummed(counting: readonly CostRow[], leftOut: number): Said {
  const count = (test: (row: CostRow) => boolean) => counting.filter(test).length;
  const credits = count(({ kind }) => isCredit(kind));
  const giftsOrTrades = count(({ kind }) => !isMoney(kind));
  const shares = count(({ shareOf }) => shareOf !== undefined);
  return ({ money: { sums } }) => {
    const many = (number: number, words: (count: number) => string) =>
      number > 0 ? [words(number)] : [];
    return [
      sums.costRows(counting.length),
      ...many(credits, sums.credits),
      ...many(giftsOrTrades, sums.giftsOrTrades),
      ...many(shares, sums.shares),
      ...many(leftOut, sums.leftOut),
    ].join(', ');
  };
}

/** Money broken down by category, phase or source. */
export function costsBy(
  rows: readonly CostRow[],
  currency: string,
  grouping: Grouping<CostRow>,
): Breakdown<Money, CostRow> {
  const counting = rows.filter(({ inTotals }) => inTotals);
  const { groups } = breakDown(counting, grouping, (group) => sumCosts(group, currency));
  return { groups, total: sumCosts(rows, currency) };
}

/** Each row once for every one that shares it, counting for that share: so that a breakdown by phase or part adds up. */
export function shareOut(
  rows: readonly CostRow[],
  sharesIn: (row: CostRow) => readonly Share[],
): { readonly key: string; readonly row: CostRow }[] {
  return rows.flatMap((row) => {
    const shares = sharesIn(row);
    const [only] = shares;
    if (shares.length <= 1) return [{ key: only?.id ?? 'none', row }];
    return shares.map(({ id, money }) => ({
      key: id,
      row: { ...row, counted: money, shareOf: row.counted },
    }));
  });
}

/** Money broken down by what shares each row. */
export function costsByShare(
  rows: readonly CostRow[],
  currency: string,
  {
    sharesIn,
    ...grouping
  }: Omit<Grouping<CostRow>, 'keyOf'> & {
    readonly sharesIn: (row: CostRow) => readonly Share[];
  },
): Breakdown<Money, CostRow> {
  const shared = shareOut(rows, sharesIn);
  const keys = new Map(shared.map(({ key, row }) => [row, key]));
  const { groups } = costsBy(
    shared.map(({ row }) => row),
    currency,
    { ...grouping, keyOf: (row) => keys.get(row) ?? 'none' },
  );
  return { groups, total: sumCosts(rows, currency) };
}

/**
 * Rows with the total up to and with each; a row that is out of the totals leaves it as it was, and so does one that does not
 * count any more.
 */
export function runningTotals(
  rows: readonly CostRow[],
  currency: string,
  counts: (row: CostRow) => boolean = stillStands,
): { readonly row: CostRow; readonly total: Money }[] {
  let total: Money = { minor: 0, currency };
  return rows.map((row) => {
    if (row.inTotals && counts(row)) total = sum([total, row.counted], currency);
    return { row, total };
  });
}
