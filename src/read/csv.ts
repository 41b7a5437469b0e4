import { type Place, type Problem, problemAt } from './problem.ts';
import type { Path, RawRecord, RawValue } from './raw.ts';
import type { ReadRecords } from './yaml.ts';

/** A cell and the line and column where it starts. */
export interface Cell {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

/** Splits RFC 4180 text into rows of cells with their places; with a problem the rows end before it. */
export function splitCsv(text: string, file: string): { rows: Cell[][]; problems: Problem[] } {
  const rows: Cell[][] = [];
  const problems = eachRow(text, file, (row) => rows.push(row));
  return { rows, problems };
}

/**
 * Hands on one row after the other, so that a long table is never held as cells as a whole.
 * CR LF and LF both end a row; the separator is the one of `,`, `;` (spreadsheets of half the world) and tab that the header uses.
 */
function eachRow(text: string, file: string, use: (row: Cell[]) => void): Problem[] {
  const separator = separatorOf(text);
  let row: Cell[] = [];
  let offset = 0;
  let line = 1;
  let lineStart = 0;

  while (offset < text.length || row.length > 0) {
    const start = { line, column: offset - lineStart + 1 };
    let value = '';
    if (text[offset] === '"') {
      // > say ""hi"""
      //   ^ inside quotes, a doubled quote is one quote
      offset++;
      for (;;) {
        const quote = text.indexOf('"', offset);
        if (quote === -1)
          return [
            problemAt(
              { file, ...start },
              'csv/open-quote',
              'a quoted cell is never closed',
              'end the cell with "',
            ),
          ];
        const part = text.slice(offset, quote);
        value += part;
        for (let i = part.indexOf('\n'); i !== -1; i = part.indexOf('\n', i + 1)) {
          line++;
          lineStart = offset + i + 1;
        }
        offset = quote + 1;
        if (text[offset] !== '"') break;
        value += '"';
        offset++;
      }
      if (offset < text.length && text[offset] !== separator && !isLineEnd(text, offset)) {
        const place = { file, line, column: offset - lineStart + 1 };
        return [
          problemAt(
            place,
            'csv/stray-quote',
            `"${text[offset]}" stands after a closing quote`,
            'double every quote inside a quoted cell',
          ),
        ];
      }
    } else {
      const end = endOfCell(text, offset, separator);
      value = text.slice(offset, end);
      offset = end;
    }
    row.push({ text: value, ...start });

    if (text[offset] === separator) {
      offset++;
      if (offset < text.length) continue;
      row.push({ text: '', line, column: offset - lineStart + 1 });
    }
    use(row);
    row = [];
    offset += text.startsWith('\r\n', offset) ? 2 : 1;
    line++;
    lineStart = offset;
  }
  return [];
}

function endOfCell(text: string, from: number, separator: string): number {
  let end = from;
  while (end < text.length && text[end] !== separator && !isLineEnd(text, end)) end++;
  return end;
}

function isLineEnd(text: string, offset: number): boolean {
  return text[offset] === '\n' || text.startsWith('\r\n', offset);
}

/** The separator of a table: the one of comma, semicolon and tab that its header uses most. */
export function separatorOf(text: string): string {
  const uses = new Map([',', ';', '\t'].map((separator) => [separator, 0]));
  let quoted = false;
  for (const sign of text) {
    if (sign === '"') quoted = !quoted;
    if (sign === '\n' && !quoted) break;
    const count = uses.get(sign);
    if (count !== undefined && !quoted) uses.set(sign, count + 1);
  }
  return [...uses].reduce((best, next) => (next[1] > best[1] ? next : best))[0];
}

/** Reads a CSV file with a header line into records. Empty cells are absent; `machine.maker` in the header nests. */
export function readCsv(text: string, file: string): ReadRecords {
  let columns: Columns | undefined;
  const wrong: Problem[] = [];
  const ragged: Problem[] = [];
  const records: RawRecord[] = [];
  const broken = eachRow(text, file, (cells) => {
    if (columns === undefined) {
      columns = columnsOf(cells, file);
      wrong.push(...headerProblems(cells, file));
    } else if (cells.length === columns.header.length && !isBlank(cells))
      records.push(recordOf(columns, cells));
    else if (!isBlank(cells)) ragged.push(raggedRow(cells, columns));
  });
  if (broken.length > 0) return { records: [], problems: broken };
  return wrong.length > 0 ? { records: [], problems: wrong } : { records, problems: ragged };
}

/** An empty line. */
function isBlank(cells: readonly Cell[]): boolean {
  return cells.length === 1 && cells[0]?.text === '';
}

function raggedRow(cells: readonly Cell[], { file, header }: Columns): Problem {
  const other = cells.length === 1 && /[,;\t]/.exec(cells[0]?.text ?? '')?.[0];
  return problemAt(
    { file, line: cells[0]?.line ?? 1, column: 1 },
    'csv/ragged',
    `${cells.length} ${cells.length === 1 ? 'cell' : 'cells'} where the header has ${header.length}`,
    other
      ? `the cells are separated by ${JSON.stringify(other)} here and by another sign in the header: use one of them`
      : 'put quotes around a cell that contains a separator',
  );
}

/** The header of a file, shared by all its records. */
interface Columns {
  readonly file: string;
  readonly header: readonly Cell[];
  readonly names: readonly string[];
  readonly paths: readonly (readonly string[])[];
  readonly index: ReadonlyMap<string, number>;
}

function columnsOf(header: readonly Cell[], file: string): Columns {
  const names = header.map(({ text }) => text.trim());
  return {
    file,
    header,
    names,
    paths: names.map(pathOf),
    index: new Map(names.map((name, index) => [name, index])),
  };
}

/** Deeper than any record goes; a name with more points is one name, which no record knows. */
const MAX_DEPTH = 12;

function pathOf(name: string): readonly string[] {
  const path = name.split('.', MAX_DEPTH + 1);
  return path.length > MAX_DEPTH ? [name] : path;
}

/** A line of a table. It keeps where its cells start and no more: a ledger has many rows and few problems. */
class CsvRecord implements RawRecord {
  readonly value: RawValue;
  readonly #columns: Columns;
  /** Line and column of each cell, one after the other. */
  readonly #places: readonly number[];

  constructor(value: RawValue, columns: Columns, cells: readonly Cell[]) {
    this.value = value;
    this.#columns = columns;
    this.#places = cells.flatMap(({ line, column }) => [line, column]);
  }

  get columns(): readonly string[] {
    return this.#columns.names;
  }

  placeOf(path: Path): Place {
    const { file, header } = this.#columns;
    // A field that has no column is missing from the header, once for all rows.
    if (path.length === 0) return { file, line: header[0]?.line ?? 1, column: 1 };
    const index = this.#indexOf(path);
    if (index === undefined) return this.placeOf(path.slice(0, -1));
    return { file, line: this.#places[2 * index] ?? 1, column: this.#places[2 * index + 1] ?? 1 };
  }

  keyPlaceOf(path: Path): Place {
    const { file, header } = this.#columns;
    const name = header[this.#indexOf(path) ?? -1];
    return name ? { file, line: name.line, column: name.column } : this.placeOf(path.slice(0, -1));
  }

  #indexOf(path: Path): number | undefined {
    return this.#columns.index.get(path.join('.'));
  }
}

function recordOf(columns: Columns, cells: readonly Cell[]): RawRecord {
  const value: Record<string, RawValue> = {};
  columns.paths.forEach((path, column) => {
    const text = cells[column]?.text.trim() ?? '';
    if (text !== '') setPath(value, path, text);
  });
  return new CsvRecord(value, columns, cells);
}

function setPath(record: Record<string, RawValue>, path: readonly string[], text: string): void {
  const [key = '', ...rest] = path;
  if (rest.length === 0) {
    setOwn(record, key, text);
    return;
  }
  const held = Object.hasOwn(record, key) ? record[key] : undefined;
  const inner = typeof held === 'object' ? (held as Record<string, RawValue>) : {};
  setOwn(record, key, inner);
  setPath(inner, rest, text);
}

/** A column may have any name; this one would change what the record is. Other names are set plainly, which keeps records small. */
function setOwn(record: Record<string, RawValue>, key: string, value: RawValue): void {
  if (key !== '__proto__') record[key] = value;
  else Object.defineProperty(record, key, { value, enumerable: true, configurable: true });
}

function headerProblems(header: readonly Cell[], file: string): Problem[] {
  const seen = new Set<string>();
  const problems: Problem[] = [];
  for (const { text, line, column } of header) {
    const place = { file, line, column };
    const name = text.trim();
    if (name === '')
      problems.push(
        problemAt(
          place,
          'csv/no-header',
          'a column has no name',
          'name every column in the first line',
        ),
      );
    else if (seen.has(name))
      problems.push(
        problemAt(
          place,
          'csv/duplicate-column',
          `the column "${name}" stands twice`,
          'remove one of the two',
        ),
      );
    seen.add(name);
  }
  return problems;
}
