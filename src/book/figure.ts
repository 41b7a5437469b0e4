import type { Day } from '../time/day.ts';
import type { Said } from '../words/said.ts';

/** A row that stands behind a figure, with what a reader needs to find it. */
export interface FigureRow {
  readonly id: string;
  readonly date: Day;
  readonly what: string;
}

/** A number for a page, and how it came about: the rows and what was done with them. */
export interface Figure<Value, Row extends FigureRow = FigureRow> {
  readonly value: Value;
  /** In order of date. */
  readonly rows: readonly Row[];
  /** `sum of 12 rows`, in plain words. */
  readonly how: Said;
}

/** A figure for each of several groups, in the order given, and for all of them. */
export interface Breakdown<Value, Row extends FigureRow = FigureRow> {
  readonly groups: readonly {
    readonly key: string;
    readonly name: Said;
    readonly figure: Figure<Value, Row>;
  }[];
  readonly total: Figure<Value, Row>;
}

/** How a group is keyed and named. */
export interface Grouping<Row> {
  readonly keyOf: (row: Row) => string;
  readonly nameOf: (key: string) => Said;
  /** Order of groups; keys not in it follow in the order they first appear. */
  readonly order: readonly string[];
}

/** Sorts rows into groups, sums each, and leaves out groups without rows. */
export function breakDown<Value, Row extends FigureRow>(
  rows: readonly Row[],
  { keyOf, nameOf, order }: Grouping<Row>,
  sumOf: (rows: readonly Row[]) => Figure<Value, Row>,
): Breakdown<Value, Row> {
  const byKey = new Map<string, Row[]>(order.map((key) => [key, []]));
  for (const row of rows) {
    const key = keyOf(row);
    const group = byKey.get(key);
    if (group) group.push(row);
    else byKey.set(key, [row]);
  }
  const groups = [...byKey]
    .filter(([, group]) => group.length > 0)
    .map(([key, group]) => ({ key, name: nameOf(key), figure: sumOf(group) }));
  return { groups, total: sumOf(rows) };
}
