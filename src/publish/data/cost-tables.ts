import type { Project } from '../../book/types.ts';
import type { CostRow } from '../../cost/costs.ts';
import { type Share, sharesOf } from '../../cost/shares.ts';
import { costSchema } from '../../model/cost-rows.ts';
import { exponentOf } from '../../money/currency.ts';
import { type Money, negate, toDecimal, type WrittenAmount } from '../../money/money.ts';
import { type CellContext, columnsOf } from './columns.ts';
import { listTable } from './lists.ts';
import { isWithheld } from './public.ts';
import { inTotals, standsUntil } from './standing.ts';
import { type ColumnOf, type Table, tableOf } from './table.ts';
import { tableWords } from './words.ts';

/** The costs, and what bears each: the sums of `counted` where `in_totals` is true are the totals of the site. */
export function costTables(project: Project, context: CellContext): readonly Table[] {
  const records = project.costs.map(costRecord);
  const counting = project.now.costsByCategory.total.rows;
  const columns: ColumnOf<CostRecord>[] = [
    ...columnsOf(costSchema, context),
    {
      name: 'rate',
      type: 'string',
      description: 'the exchange rate that it counts at, where it is in another currency',
      ref: 'rates',
      cell: (row) => (isWithheld(row, 'amount') ? undefined : row.rateId),
    },
    { ...countedColumn(context), cell: (row) => row.countedMoney?.minor },
    inTotals(counting),
    standsUntil,
  ];
  const shares = { owner: 'costs', records };
  return [
    tableOf<CostRecord>('costs', tableWords.costs, { columns, records }),
    listTable({
      ...{ ...shares, name: 'cost_phases', itemsOf: phasesOf },
      columns: shareColumns('phase', context),
    }),
    listTable({
      ...{ ...shares, name: 'cost_parts', itemsOf: partsOf },
      columns: shareColumns('part', context),
    }),
  ];
}

interface CostRecord {
  readonly row: CostRow;
  readonly id: string;
  /** On paper, without a sign, since the kind of row gives that. */
  readonly amount: WrittenAmount;
  readonly rateId: string | undefined;
  /** Undefined where the amount stays at home. */
  readonly countedMoney: Money | undefined;
}

/** A row with its amount as its field has it. */
function costRecord(row: CostRow): CostRecord {
  const size = row.paid.minor < 0 ? negate(row.paid) : row.paid;
  const { rate, ...fields } = row;
  return {
    ...fields,
    row,
    amount: { decimal: toDecimal(size), currency: size.currency },
    rateId: rate?.id,
    countedMoney: isWithheld(row, 'amount') ? undefined : row.counted,
  };
}

function phasesOf({ row, countedMoney }: CostRecord): readonly Bearer[] {
  const whole = row.phase === undefined ? [] : [{ id: row.phase, weight: '1' }];
  return bearers(sharesOf(row.splitPhases ?? whole, row.counted), countedMoney);
}

function partsOf({ row, countedMoney }: CostRecord): readonly Bearer[] {
  const even = (row.parts ?? []).map((id) => ({ id, weight: '1' }));
  return bearers(sharesOf(row.splitParts ?? even, row.counted), countedMoney);
}

interface Bearer {
  readonly id: string;
  readonly counted: number | undefined;
}

/** Shares of an amount that stays at home would give it away. */
function bearers(shares: readonly Share[], whole: Money | undefined): readonly Bearer[] {
  return shares.map(({ id, money }) => ({ id, counted: whole && money.minor }));
}

function shareColumns(name: 'phase' | 'part', context: CellContext): readonly ColumnOf<Bearer>[] {
  const description = `the ${name} that bears it`;
  return [
    { name, type: 'string', description, required: true, ref: `${name}s`, cell: ({ id }) => id },
    { ...countedColumn(context), cell: ({ counted }) => counted },
  ];
}

function countedColumn({ currency }: CellContext) {
  const unit = `${10 ** -(exponentOf(currency) ?? 0)} ${currency}`;
  const description = `what it counts for, in units of ${unit}; money that came in is negative`;
  return { name: 'counted', type: 'integer', description, unit } as const;
}
