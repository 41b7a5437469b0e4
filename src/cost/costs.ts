import { type Breakdown, breakDown, type Figure, type Grouping } from '../book/figure.ts';
import { stillStands } from '../ledger/standing.ts';
import { type Money, sum } from '../money/money.ts';
import { type CostRow, isCredit, isMoney } from './cost-row.ts';
import type { Share } from './shares.ts';

/** Money of the rows that count, credits taken off. */
export function sumCosts(rows: readonly CostRow[], currency: string): Figure<Money, CostRow> {
  const counting = rows.filter(({ inTotals }) => inTotals);
  const value = sum(
    counting.map(({ counted }) => counted),
    currency,
  );
  const many = (count: number, words: string) => (count > 0 ? [`${count} ${words}`] : []);
  const count = (test: (row: CostRow) => boolean) => counting.filter(test).length;
  const notes = [
    ...many(
      count(({ kind }) => isCredit(kind)),
      'of them credits',
    ),
    ...many(
      count(({ kind }) => !isMoney(kind)),
      'of them gifts or trades at a stated value',
    ),
    ...many(
      count(({ shareOf }) => shareOf !== undefined),
      'of them a share',
    ),
    ...many(rows.length - counting.length, 'left out by rule'),
  ];
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
