import type { Project } from '../../book/types.ts';
import type { CostRow } from '../../cost/cost-row.ts';
import type { Share } from '../../cost/shares.ts';
import { costSchema } from '../../model/cost-rows.ts';
import { exponentOf } from '../../money/currency.ts';
import { type Money, negate, toDecimal, type WrittenAmount } from '../../money/money.ts';
import { type CellContext, columnsOf } from './columns.ts';
import { listTable } from './lists.ts';
import { inTotals, standsUntil } from './standing.ts';
import { type BareTable, type ColumnOf, tableOf } from './table.ts';

/**
 * The costs, and what bears each: the sums of `counted` where `in_totals` is true are the totals of the site. Rows whose amounts are
 * withheld are one row for each category, as the book has them.
 */
export function costTables(project: Project, context: CellContext): readonly BareTable[] {
  // A row that counts at another rate since a correction stands there once for each; the newest is the one that counts.
  const rows = [...new Map(project.costs.map((row) => [row.id, row])).values()];
  const records = rows.map((row) => costRecord(row, new Set(rows.map(({ id }) => id))));
  const shares = { owner: 'costs', records };
  return [
    tableOf<CostRecord>('costs', {
      columns: costColumns(project, context),
      records,
    }),
    listTable<CostRecord, Share>({
      ...{ ...shares, name: 'cost_phases', itemsOf: ({ row }) => row.phases },
      columns: shareColumns('phase', context),
    }),
    listTable<CostRecord, Share>({
      ...{ ...shares, name: 'cost_parts', itemsOf: ({ row }) => row.parts },
      columns: shareColumns('part', context),
    }),
  ];
}

interface CostRecord {
  readonly id: string;
  readonly row: CostRow;
  readonly corrects: string | undefined;
  /** On paper, without a sign, since the kind of row gives that. */
  readonly amount: WrittenAmount;
}

/** A row with its amount as its field has it. It can't correct a row that stays at home. */
function costRecord(row: CostRow, published: ReadonlySet<string>): CostRecord {
  const corrects = published.has(row.corrects ?? '') ? row.corrects : undefined;
  const { currency } = row.paid;
  return { ...row, row, corrects, amount: { decimal: decimalOf(row.paid), currency } };
}

function decimalOf(money: Money): string {
  return toDecimal(money.minor < 0 ? negate(money) : money);
}

function costColumns(project: Project, context: CellContext): readonly ColumnOf<CostRecord>[] {
  return [
    // The book has worked out the tax, the share and the phases; what it found stands in their place.
    ...columnsOf(costSchema, context, ['tax', 'share', 'phase']),
    {
      name: 'tax',
      type: 'number',
      minimum: 0,
      cell: ({ row }) => row.tax && decimalOf(row.tax),
    },
    {
      name: 'phase',
      type: 'string',
      ref: 'phases',
      cell: ({ row }) => (row.phases.length === 1 ? row.phases[0]?.id : undefined),
    },
    {
      name: 'rate',
      type: 'string',
      ref: 'rates',
      cell: ({ row }) => row.rate?.id,
    },
    { ...countedColumn(context), cell: ({ row }) => row.counted.minor },
    inTotals(project.now.costsByCategory.total.rows),
    standsUntil,
  ];
}

function shareColumns(name: 'phase' | 'part', context: CellContext): readonly ColumnOf<Share>[] {
  return [
    { name, type: 'string', required: true, ref: `${name}s`, cell: ({ id }) => id },
    { ...countedColumn(context), cell: ({ money }) => money.minor },
  ];
}

function countedColumn({ currency }: CellContext) {
  const unit = `${10 ** -(exponentOf(currency) ?? 0)} ${currency}`;
  return { name: 'counted', type: 'integer', required: true, unit } as const;
}
