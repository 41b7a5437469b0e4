type IdOf<Row> = (row: Row) => string;

const idOfRow = ({ id }: { readonly id: string }): string => id;

/** Id of a row whose `id` is that of its first: a part, an order, a preparation. */
export const ownId = ({ rowId }: { readonly rowId: string }): string => rowId;

/** Id of the row that a measured reading was made from. */
export const readingId = ({ reading }: { readonly reading: { readonly id: string } }): string =>
  reading.id;

const indexes = new WeakMap<object, Map<unknown, ReadonlyMap<string, unknown>>>();

/** The first row of a list that goes by an id. The list must not change: it is indexed when something is first looked for in it. */
export function findRow<Row extends { readonly id: string }>(
  rows: readonly Row[],
  id: string,
): Row | undefined;
export function findRow<Row>(rows: readonly Row[], id: string, idOf: IdOf<Row>): Row | undefined;
export function findRow<Row>(
  rows: readonly Row[],
  id: string,
  idOf: IdOf<Row> = idOfRow as unknown as IdOf<Row>,
): Row | undefined {
  const kept = indexes.get(rows) ?? new Map<unknown, ReadonlyMap<string, unknown>>();
  indexes.set(rows, kept);
  const index = kept.get(idOf) ?? indexOf(rows, idOf);
  kept.set(idOf, index);
  return index.get(id) as Row | undefined;
}

function indexOf<Row>(rows: readonly Row[], idOf: IdOf<Row>): ReadonlyMap<string, Row> {
  // From the end, so that of rows with one id the first is found, as with find.
  return new Map(rows.toReversed().map((row) => [idOf(row), row]));
}
