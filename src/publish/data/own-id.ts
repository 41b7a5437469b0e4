/** A row that corrects another goes by the id of the first in the book; in its table it has its own. */
export function withOwnId<Row extends { readonly rowId: string }>({ rowId, ...row }: Row) {
  return { ...row, id: rowId };
}
