import { type Column, type ColumnOf, type Table, tableOf } from './table.ts';
import { tableWords } from './words.ts';

interface HasId {
  readonly id: string;
}

/** A list of a record as a table of its own, so that a database can follow its keys. */
export interface ListTable<Owner extends HasId, Item> {
  readonly name: keyof typeof tableWords;
  /** The table whose records have the list. */
  readonly owner: string;
  readonly records: readonly Owner[];
  readonly itemsOf: (record: Owner) => readonly Item[];
  readonly columns: readonly ColumnOf<Item>[];
}

/** One row for every item of every record's list, with its place in the list. */
export function listTable<Owner extends HasId, Item>(list: ListTable<Owner, Item>): Table {
  const owner = ownerColumn(list.owner);
  const position: Column = {
    name: 'position',
    type: 'integer',
    description: 'place in the list, from 1',
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
  return tableOf(list.name, tableWords[list.name], { columns, records, primaryKey });
}

/** A list of ids of another table, or of plain words. */
export function plainList<Owner extends HasId>(
  list: Omit<ListTable<Owner, string>, 'columns'>,
  item: Omit<Column, 'type' | 'required'>,
): Table {
  const column = { ...item, type: 'string', required: true, cell: (id: string) => id } as const;
  return listTable({ ...list, columns: [column] });
}

function ownerColumn(table: string): Column {
  const name = table === 'entries' ? 'entry' : table.replace(/s$/, '');
  return { name, type: 'string', description: `id in ${table}`, required: true, ref: table };
}
