import type { Entry } from '../../book/types.ts';
import { entrySchema } from '../../model/entry.ts';
import { type CellContext, columnsOf } from './columns.ts';
import { listTable, plainList } from './lists.ts';
import { type BareTable, type ColumnOf, tableOf } from './table.ts';

type Moment = NonNullable<Entry['moments']>[number];

/** The entries of the log, without their text, and which of the published rows they tell about. An entry's id is the name of its page. */
export function entryTables(
  entries: readonly Entry[],
  context: CellContext,
  published: ReadonlySet<unknown>,
): readonly BareTable[] {
  const records = entries.map((entry) => ({ ...entry, id: entry.slug }));
  const columns: ColumnOf<Entry>[] = [
    {
      name: 'id',
      type: 'string',
      required: true,
      cell: ({ slug }) => slug,
    },
    {
      name: 'number',
      type: 'integer',
      required: true,
      minimum: 1,
      cell: ({ number }) => number,
    },
    ...columnsOf(entrySchema, context, ['moments', 'draft']),
  ];
  const owned = { owner: 'entries', records };
  return [
    tableOf('entries', { columns, records }),
    plainList(
      {
        ...owned,
        name: 'entry_tells',
        itemsOf: ({ tells = [] }) => tells.filter((id) => published.has(id)),
      },
      { name: 'row', ref: 'rows' },
    ),
    plainList({ ...owned, name: 'entry_tags', itemsOf: ({ tags = [] }) => tags }, { name: 'tag' }),
    listTable<Entry & { readonly id: string }, Moment>({
      ...owned,
      name: 'entry_moments',
      itemsOf: ({ moments = [] }) => moments,
      columns: momentColumns,
    }),
  ];
}

const momentColumns: readonly ColumnOf<Moment>[] = [
  {
    name: 'seconds',
    type: 'integer',
    required: true,
    minimum: 0,
    unit: 's',
    cell: ({ at }) => at,
  },
  {
    name: 'label',
    type: 'string',
    required: true,
    cell: ({ label }) => label,
  },
  {
    name: 'spec',
    type: 'string',
    ref: 'specs',
    cell: ({ spec }) => spec,
  },
  {
    name: 'part',
    type: 'string',
    ref: 'parts',
    cell: ({ part }) => part,
  },
];
