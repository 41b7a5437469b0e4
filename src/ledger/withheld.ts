import type { CostRow } from '../cost/cost-row.ts';
import { sum, zero } from '../money/money.ts';
import type { Day } from '../time/day.ts';
import type { Words } from '../words/words.ts';

/** What stands in the data in place of a text that the builder keeps to herself; pages say it in their language. */
export const WITHHELD = 'withheld';

interface Withholding {
  readonly withhold?: readonly string[] | undefined;
}

/** Whether a row keeps a field of its own at home. */
export function withholds(row: Withholding, field: string): boolean {
  return row.withhold?.includes(field) ?? false;
}

interface Told extends Withholding {
  readonly what: string;
  /** Set where the row stands for so many rows whose amounts are not published. */
  readonly withheldRows?: number | undefined;
}

/** What a row says of itself, in the words of a page where the words are ours and not the builder's. */
export function toldOf(row: Told, { marks }: Words): string {
  if (row.withheldRows !== undefined) return marks.withheldTogether(row.withheldRows);
  return withholds(row, 'what') ? marks.withheld : row.what;
}

/** A row as it may be published: what it withholds is gone, or says so where something must stand. */
export function published<Row extends Withholding>(row: Row): Row {
  if (row.withhold === undefined) return row;
  const hidden = row.withhold.map((field) => [field, field === 'what' ? WITHHELD : undefined]);
  return { ...row, ...Object.fromEntries(hidden) };
}

/**
 * Cost rows with one total for each category in place of the rows whose amounts are withheld. The totals are dated the newest day
 * and stand at the end, so that no running total and no entry gives an amount away by a difference.
 */
export function gatherWithheld(rows: readonly CostRow[], today: Day): readonly CostRow[] {
  const open = rows.filter((row) => !withholds(row, 'amount'));
  const kept = rows.filter(
    (row) => withholds(row, 'amount') && row.until === undefined && row.inTotals,
  );
  const totals = [...Map.groupBy(kept, ({ category }) => category)].map(([category, group]) =>
    totalOf(category, group, today),
  );
  return [...open, ...totals];
}

function totalOf(category: CostRow['category'], group: readonly CostRow[], today: Day): CostRow {
  const currency = group[0]?.counted.currency ?? '';
  const counted = sum(
    group.map((row) => row.counted),
    currency,
  );
  const rows = group.length === 1 ? '1 row' : `${group.length} rows`;
  return {
    id: `withheld-${category}`,
    date: today,
    category,
    kind: 'payment',
    what: `${rows} whose amounts are withheld, together`,
    paid: counted,
    tax: undefined,
    counted,
    elsewhere: zero(currency),
    rate: undefined,
    inTotals: true,
    phases: [],
    parts: [],
    withheldRows: group.length,
  };
}
