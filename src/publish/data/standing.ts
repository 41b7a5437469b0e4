import type { ColumnOf } from './table.ts';

/** The day from which another row stands in a row's place; rows of a book that knows of none have no such day. */
export const standsUntil: ColumnOf<object> = {
  name: 'stands_until',
  type: 'date',
  cell: (row) => ('until' in row && typeof row.until === 'string' ? row.until : undefined),
};

/** Whether a row is one of those that a total of the site is summed from. */
export function inTotals(counting: readonly { readonly id: string }[]): ColumnOf<object> {
  const ids = new Set<unknown>(counting.map(({ id }) => id));
  return {
    name: 'in_totals',
    type: 'boolean',
    required: true,
    cell: (row) => 'id' in row && ids.has(row.id),
  };
}
