import type { Project } from '../../book/types.ts';
import { type ListKind, listKinds, rowKinds, type Withdrawal } from '../../model/kinds.ts';
import type { Words } from '../../words/words.ts';
import { type CellContext, columnName, columnsOf } from './columns.ts';
import { costTables } from './cost-tables.ts';
import { decisionTables } from './decision-tables.ts';
import { described } from './described.ts';
import { entryTables } from './entry-tables.ts';
import { plainList } from './lists.ts';
import { withOwnId } from './own-id.ts';
import { peopleTable, publicPerson } from './people.ts';
import { readingValues } from './reading-values.ts';
import { specTables } from './spec-tables.ts';
import { inTotals, standsUntil } from './standing.ts';
import { type BareTable, type ColumnOf, type Table, type TableName, tableOf } from './table.ts';

/** Every table of a project's ledger in the words of a language, those that others refer to first. Private and withheld values are in none of them. */
export function ledgerTables(project: Project, words: Words): readonly Table[] {
  const { people, work } = project.info;
  const context: CellContext = {
    currency: project.currency,
    personOf: (id) => publicPerson(people, id),
  };
  const orders = project.orders.map(withOwnId);
  const own = (
    kind: ListKind & TableName,
    records: readonly object[],
    more: readonly ColumnOf<object>[] = [],
  ) => kindTable(kind, records, { context, more });
  const readings = project.readings.map(({ reading }) => reading);

  const tables = [
    own('sources', project.sources),
    own('phases', project.phases),
    plainList(
      {
        name: 'phase_after',
        owner: 'phases',
        records: project.phases,
        itemsOf: ({ after = [] }) => after.map(({ id }) => id),
      },
      { name: 'after', ref: 'phases' },
    ),
    ...specTables(project.specs, project.recipes, context),
    own('instruments', project.instruments),
    peopleTable(people),
    workTable(work),
    own('hours', project.hours, [inTotals(project.now.hoursByPhase.total.rows)]),
    ...costTables(project, context),
    own('orders', orders),
    plainList(
      {
        name: 'order_parts',
        owner: 'orders',
        records: orders,
        itemsOf: ({ parts = [] }) => parts,
      },
      { name: 'part', ref: 'parts' },
    ),
    own('budgets', project.budgets),
    own('parts', project.partRows.map(withOwnId)),
    own('readings', readings),
    readingValues(readings),
    own('rates', project.rates),
    own('searches', project.searches),
    ...decisionTables(project, context),
    withheldTable([
      ...[...project.hours, ...project.costs, ...readings, ...project.searches],
      ...[...project.findings, ...project.candidates.map(withOwnId)],
    ]),
  ];
  const published = new Set(tables.filter(isLedger).flatMap(({ rows }) => rows.map(([id]) => id)));
  const withdrawals = withdrawalsOf(project).filter(({ row }) => published.has(row));
  for (const { id } of withdrawals) published.add(id);
  const all = [
    ...tables,
    own('withdrawals', withdrawals),
    ...entryTables(project.entries, context, published),
  ];
  return [...all, rowsTable(all)].map((table) => described(table, words));
}

function withdrawalsOf({ corrections }: Project): readonly Withdrawal[] {
  return corrections
    .filter(({ by }) => by === undefined)
    .map(({ said, on, old, because }) => ({ id: said, date: on, row: old, because }));
}

/** Whether a table is one of rows, whose ids are unique together. */
function isLedger({ name }: BareTable): boolean {
  return (rowKinds as readonly string[]).includes(name);
}

function kindTable(
  kind: ListKind & TableName,
  records: readonly object[],
  { context, more }: { readonly context: CellContext; readonly more: readonly ColumnOf<object>[] },
): BareTable {
  const schema = listKinds[kind];
  const corrected = 'corrects' in schema.shape ? [standsUntil] : [];
  return tableOf<object>(kind, {
    columns: [...columnsOf(schema, context), ...more, ...corrected],
    records,
  });
}

type Withholding = { readonly id: string; readonly withhold?: readonly string[] | undefined };

/** An empty cell may be a field without a value or one that is withheld; this says which. */
function withheldTable(records: readonly Withholding[]): BareTable {
  const itemsOf = ({ withhold = [] }: Withholding) => withhold.map(columnName);
  return plainList({ name: 'withheld', owner: 'rows', records, itemsOf }, { name: 'field' });
}

function workTable(work: readonly string[]): BareTable {
  const text = { type: 'string', required: true } as const;
  return tableOf('work', {
    columns: [{ ...text, name: 'id', cell: (id: string) => id }],
    records: work,
  });
}

/** What an entry tells about, or a withdrawal takes back, may be a row of any kind. */
function rowsTable(tables: readonly BareTable[]): BareTable {
  const kinds: readonly string[] = rowKinds;
  const records = tables
    .filter(isLedger)
    .flatMap(({ name, rows }) => rows.map(([id]) => ({ id, kind: name })));
  const text = { type: 'string', required: true } as const;
  return tableOf('rows', {
    columns: [
      { ...text, name: 'id', cell: ({ id }) => id },
      { ...text, name: 'kind', enum: kinds, cell: ({ kind }) => kind },
    ],
    records,
  });
}
