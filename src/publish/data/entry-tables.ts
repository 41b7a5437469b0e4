import type { Entry } from '../../book/types.ts';
import { entrySchema } from '../../model/entry.ts';
import { type CellContext, columnsOf } from './columns.ts';
import { listTable, plainList } from './lists.ts';
import { type ColumnOf, type Table, tableOf } from './table.ts';
import { tableWords } from './words.ts';

type Moment = NonNullable<Entry['moments']>[number];

/** The entries of the log, without their text, and which of the published rows they tell about. An entry's id is the name of its page. */
export function entryTables(
  entries: readonly Entry[],
  context: CellContext,
  published: ReadonlySet<unknown>,
): readonly Table[] {
  const records = entries.map((entry) => ({ ...entry, id: entry.slug }));
  const columns: ColumnOf<Entry>[] = [
    {
      name: 'id',
      type: 'string',
      description: 'name of its page',
      required: true,
      cell: ({ slug }) => slug,
    },
    {
      name: 'number',
      type: 'integer',
      description: 'its place in the log, from 1',
      required: true,
      minimum: 1,
      cell: ({ number }) => number,
    },
    ...columnsOf(entrySchema, context, ['moments', 'draft']),
  ];
  const owned = { owner: 'entries', records };
  return [
    tableOf('entries', tableWords.entries, { columns, records }),
    plainList(
      {
        ...owned,
        name: 'entry_tells',
        itemsOf: ({ tells = [] }) => tells.filter((id) => published.has(id)),
      },
      { name: 'row', description: 'the row', ref: 'rows' },
    ),
    plainList(
      { ...owned, name: 'entry_tags', itemsOf: ({ tags = [] }) => tags },
      { name: 'tag', description: 'the tag' },
    ),
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
    description: 'seconds into the video',
    required: true,
    minimum: 0,
    unit: 's',
    cell: ({ at }) => at,
  },
  {
    name: 'label',
    type: 'string',
    description: 'what is to be seen',
    required: true,
    cell: ({ label }) => label,
  },
  {
    name: 'spec',
    type: 'string',
    description: 'the spec that it is about',
    ref: 'specs',
    cell: ({ spec }) => spec,
  },
  {
    name: 'part',
    type: 'string',
    description: 'the part that it is about',
    ref: 'parts',
    cell: ({ part }) => part,
  },
];
