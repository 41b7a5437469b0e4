import type { Reading } from '../../model/kinds.ts';
import { listTable } from './lists.ts';
import type { ColumnOf, Table } from './table.ts';

/** Every value as its instrument showed it, digits and all, in the unit of its reading. */
export function readingValues(readings: readonly Reading[]): Table {
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
    description: 'in the unit of its reading',
    required: true,
    cell: ({ written }) => written,
  },
  {
    name: 'counts',
    type: 'boolean',
    description: 'whether it counts; one that does not has its reason in the reading',
    required: true,
    cell: ({ counts }) => counts,
  },
];
