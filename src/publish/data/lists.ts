import {
  type BareColumn,
  type BareTable,
  type ColumnOf,
  type TableName,
  tableOf,
} from './table.ts';

interface HasId {
  readonly id: string;
}

/** A list of a record as a table of its own, so that a database can follow its keys. */
export interface ListTable<Owner extends HasId, Item> {
  readonly name: TableName;
  /** The table whose records have the list. */
  readonly owner: string;
  readonly records: readonly Owner[];
  readonly itemsOf: (record: Owner) => readonly Item[];
  readonly columns: readonly ColumnOf<Item>[];
}

/** One row for every item of every record's list, with its place in the list. */
export function listTable<Owner extends HasId, Item>(list: ListTable<Owner, Item>): BareTable {
  const owner = ownerColumn(list.owner);
  const position: BareColumn = {
    name: 'position',
    type: 'integer',
    required: true,
    minimum: 1,
  };
  type Placed = { readonly id: string; readonly position: number; readonly item: Item };
  const columns: ColumnOf<Placed>[] = [
    { ...owner, cell: ({ id }) => id },
    { ...position, cell: (placed) => placed.position },
    ...list.columns.map((column) => ({ ...column, cell: ({ item }: Placed) => column.cell(item) })),
  ];
  const records = list.records.flatMap((record) =>
    list.itemsOf(record).map((item, index) => ({ id: record.id, position: index + 1, item })),
  );
  const primaryKey = [owner.name, position.name];
  return tableOf(list.name, { columns, records, primaryKey });
}

/** A list of ids of another table, or of plain words. */
export function plainList<Owner extends HasId>(
  list: Omit<ListTable<Owner, string>, 'columns'>,
  item: Omit<BareColumn, 'type' | 'required'>,
): BareTable {
  const column = { ...item, type: 'string', required: true, cell: (id: string) => id } as const;
  return listTable({ ...list, columns: [column] });
}

function ownerColumn(table: string): BareColumn {
  const name = table === 'entries' ? 'entry' : table.replace(/s$/, '');
  return { name, type: 'string', required: true, ref: table };
}
