import type { Cell, Table } from './data/table.ts';

/** A table as RFC 4180 has it: one header line, CR LF after every line, a cell in quotes where it must be. UTF-8 without a mark. */
export function csvOf({ columns, rows }: Pick<Table, 'columns' | 'rows'>): string {
  const lines = [columns.map(({ name }) => name), ...rows];
  return lines.map((cells) => `${cells.map(csvCell).join(',')}\r\n`).join('');
}

function csvCell(cell: Cell): string {
  const text = cell === undefined ? '' : String(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
