import type { Project } from '../../book/types.ts';
import { type ListKind, listKinds, rowKinds, type Withdrawal } from '../../model/kinds.ts';
import { type CellContext, columnName, columnsOf } from './columns.ts';
import { costTables } from './cost-tables.ts';
import { entryTables } from './entry-tables.ts';
import { plainList } from './lists.ts';
import { peopleTable, publicPerson } from './people.ts';
import { readingValues } from './reading-values.ts';
import { specTables } from './spec-tables.ts';
import { inTotals, standsUntil } from './standing.ts';
import { type ColumnOf, type Table, tableOf } from './table.ts';
import { tableWords } from './words.ts';

/** Every table of a project's ledger, those that others refer to first. Private and withheld values are in none of them. */
export function ledgerTables(project: Project): readonly Table[] {
  const { people, work } = project.info;
  const context: CellContext = {
    currency: project.currency,
    personOf: (id) => publicPerson(people, id),
  };
  const orders = project.orders.map(withOwnId);
  const own = (
    kind: ListKind,
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
        itemsOf: ({ after = [] }) => after,
      },
      { name: 'after', description: 'the phase that it waits for', ref: 'phases' },
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
      { name: 'part', description: 'the part', ref: 'parts' },
    ),
    own('budgets', project.budgets),
    own('parts', project.partRows.map(withOwnId)),
    own('readings', readings),
    readingValues(readings),
    own('rates', project.rates),
    own('searches', project.searches),
    withheldTable([...project.hours, ...project.costs, ...readings, ...project.searches]),
  ];
  const published = new Set(tables.filter(isLedger).flatMap(({ rows }) => rows.map(([id]) => id)));
  const withdrawals = withdrawalsOf(project).filter(({ row }) => published.has(row));
  for (const { id } of withdrawals) published.add(id);
  const all = [
    ...tables,
    own('withdrawals', withdrawals),
    ...entryTables(project.entries, context, published),
  ];
  return [...all, rowsTable(all)];
}

/** A row that corrects a part or an order goes by the id of the first in the book; in its table it has its own. */
function withOwnId<Row extends { readonly rowId: string }>({ rowId, ...row }: Row) {
  return { ...row, id: rowId };
}

function withdrawalsOf({ corrections }: Project): readonly Withdrawal[] {
  return corrections
    .filter(({ by }) => by === undefined)
    .map(({ said, on, old, because }) => ({ id: said, date: on, row: old, because }));
}

/** Whether a table is one of rows, whose ids are unique together. */
function isLedger({ name }: Table): boolean {
  return (rowKinds as readonly string[]).includes(name);
}

function kindTable(
  kind: ListKind,
  records: readonly object[],
  { context, more }: { readonly context: CellContext; readonly more: readonly ColumnOf<object>[] },
): Table {
  const schema = listKinds[kind];
  const corrected = 'corrects' in schema.shape ? [standsUntil] : [];
  return tableOf<object>(kind, tableWords[kind], {
    columns: [...columnsOf(schema, context), ...more, ...corrected],
    records,
  });
}

type Withholding = { readonly id: string; readonly withhold?: readonly string[] | undefined };

/** An empty cell may be a field without a value or one that is withheld; this says which. */
function withheldTable(records: readonly Withholding[]): Table {
  const itemsOf = ({ withhold = [] }: Withholding) => withhold.map(columnName);
  return plainList(
    { name: 'withheld', owner: 'rows', records, itemsOf },
    { name: 'field', description: 'the column that is empty' },
  );
}

function workTable(work: readonly string[]): Table {
  const text = { type: 'string', required: true } as const;
  const description = 'its name, the same for good';
  return tableOf('work', tableWords.work, {
    columns: [{ ...text, name: 'id', description, cell: (id: string) => id }],
    records: work,
  });
}

/** What an entry tells about, or a withdrawal takes back, may be a row of any kind. */
function rowsTable(tables: readonly Table[]): Table {
  const kinds: readonly string[] = rowKinds;
  const records = tables
    .filter(isLedger)
    .flatMap(({ name, rows }) => rows.map(([id]) => ({ id, kind: name })));
  const text = { type: 'string', required: true } as const;
  return tableOf('rows', tableWords.rows, {
    columns: [
      { ...text, name: 'id', description: 'id of the row', cell: ({ id }) => id },
      { ...text, name: 'kind', description: 'its table', enum: kinds, cell: ({ kind }) => kind },
    ],
    records,
  });
}
