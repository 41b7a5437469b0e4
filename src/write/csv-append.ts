import { type Cell, separatorOf, splitCsv } from '../read/csv.ts';
import type { Appended, Insertion } from './insertion.ts';
import { lineEndOf, withoutMark } from './line-end.ts';

/** A row's fields as text by their names in files; an empty text is an empty cell. */
export type Fields = Readonly<Record<string, string>>;

/**
 * Rows at the end of a table, in its own style: separator, quotes, line ends. A column that they need and the table lacks is added at
 * the right, empty in the rows there are. A text without a header gets one.
 */
export function appendCsvRows(text: string, added: readonly Fields[]): Appended {
  const { mark, body } = withoutMark(text);
  const table = tableOf(body);
  const wanted = new Set(added.flatMap((row) => Object.keys(row).filter((name) => row[name])));
  const fresh = [...wanted].filter((name) => !table.names.includes(name));
  const columns = [...table.names, ...fresh];
  const write = (row: Fields) =>
    columns
      .map((name, index) => cellOf(fieldOf(row, name), table, table.quoted[index]))
      .join(table.separator) + table.lineEnd;

  const rows = added.map(write);
  const close = body === '' || body.endsWith('\n') ? '' : table.lineEnd;
  const isNew = table.names.length === 0;
  const header = isNew ? columns.join(table.separator) + table.lineEnd : '';
  const insertions = [
    ...(isNew || fresh.length === 0 ? [] : widen(table, fresh)),
    { at: body.length, text: close + header + rows.join('') },
  ];
  return {
    insertions: insertions.map(({ at, text: part }) => ({ at: at + mark.length, text: part })),
    rows: rows.map((row) => row.slice(0, -table.lineEnd.length)),
  };
}

/** A table may have a column by the name of what every object has. */
function fieldOf(row: Fields, name: string): string {
  return Object.hasOwn(row, name) ? (row[name] ?? '') : '';
}

interface Table {
  readonly body: string;
  readonly separator: string;
  readonly lineEnd: string;
  readonly names: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  /** Where each row starts. */
  readonly starts: readonly number[];
  /** Whether every cell of the table is in quotes, empty ones too. */
  readonly allQuoted: boolean;
  /** For each column, whether its cells are in quotes though they need none. */
  readonly quoted: readonly boolean[];
}

function tableOf(body: string): Table {
  const separator = separatorOf(body);
  const all = body.trim() === '' ? [] : splitCsv(body, '').rows;
  const lineStarts = [0, ...[...body.matchAll(/\n/g)].map(({ index }) => index + 1)];
  const offset = ({ line, column }: Cell) => (lineStarts[line - 1] ?? 0) + column - 1;
  const inQuotes = (cell: Cell) => body[offset(cell)] === '"';
  const rows = all.filter((row) => row.length > 1 || row[0]?.text !== '');
  const [header = [], ...data] = rows;
  const starts = all.map((row) => (row[0] ? offset(row[0]) : body.length));
  // Lines inside of quotes end as they were typed, so that only the end of a row tells.
  const lastEnd = body.endsWith('\n') ? body.length : starts.at(-1);
  return {
    body,
    separator,
    lineEnd: lineEndOf(body.slice(0, lastEnd)),
    names: header.map(({ text }) => text.trim()),
    rows: all,
    starts,
    allQuoted: rows.length > 0 && rows.every((row) => row.every(inQuotes)),
    quoted: header.map((_, index) => {
      const plain = data.flatMap((row) => row[index] ?? []).filter(({ text }) => text !== '');
      const free = plain.filter(({ text }) => !needsQuotes(text, separator));
      return free.length > 0 && free.every(inQuotes);
    }),
  };
}

/** New columns in every line that is a row. */
function widen(table: Table, fresh: readonly string[]): Insertion[] {
  return table.rows.flatMap((row, index) => {
    if (row.length === 1 && row[0]?.text === '') return [];
    const cells = fresh.map((name) => cellOf(index === 0 ? name : '', table, table.allQuoted));
    return [{ at: endOfRow(table, index), text: cells.map((c) => table.separator + c).join('') }];
  });
}

function endOfRow({ body, starts }: Table, index: number): number {
  const next = starts[index + 1] ?? body.length;
  if (body[next - 1] !== '\n') return next;
  return body[next - 2] === '\r' ? next - 2 : next - 1;
}

function cellOf(text: string, { separator, allQuoted }: Table, habit = false): string {
  if (text === '') return allQuoted ? '""' : '';
  const quote = allQuoted || habit || needsQuotes(text, separator);
  return quote ? `"${text.replaceAll('"', '""')}"` : text;
}

function needsQuotes(text: string, separator: string): boolean {
  return text.includes(separator) || /["\r\n]|^\s|\s$/.test(text);
}
