export type Cells = Readonly<Record<string, string | number | undefined>>;

/** Rows as CSV, in the columns that the first names and the later ones add. */
export function tableText(rows: readonly Cells[]): string {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const lines = rows.map((row) => columns.map((column) => cell(row[column])).join(','));
  return `${[columns.join(','), ...lines].join('\n')}\n`;
}

function cell(value: string | number | undefined): string {
  const text = String(value ?? '');
  return /[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
