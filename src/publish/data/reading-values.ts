import type { Reading } from '../../model/kinds.ts';
import { listTable } from './lists.ts';
import type { BareTable, ColumnOf } from './table.ts';

/** Every value as its instrument showed it, digits and all, in the unit of its reading. */
export function readingValues(readings: readonly Reading[]): BareTable {
  return listTable({
    ...{ name: 'reading_values', owner: 'readings', records: readings, columns },
    itemsOf: ({ values, excluded = [] }) =>
      values.map(({ value, decimals }, index) => ({
        written: value.toFixed(decimals),
        counts: !excluded.includes(index + 1),
      })),
  });
}

interface Value {
  readonly written: string;
  readonly counts: boolean;
}

const columns: readonly ColumnOf<Value>[] = [
  {
    name: 'value',
    type: 'number',
    required: true,
    cell: ({ written }) => written,
  },
  {
    name: 'counts',
    type: 'boolean',
    required: true,
    cell: ({ counts }) => counts,
  },
];
