import { type Place, type Problem, problemAt } from './problem.ts';
import type { Path, RawRecord, RawValue } from './raw.ts';
import type { ReadRecords } from './yaml.ts';

/** A cell and the line and column where it starts. */
export interface Cell {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

/**
 * Splits RFC 4180 text into rows of cells with their places.
 * CR LF and LF both end a row; the separator is the one of `,` and `;` (spreadsheets of half the world) that the header uses.
 */
export function splitCsv(text: string, file: string): { rows: Cell[][]; problems: Problem[] } {
  const separator = separatorOf(text);
  const rows: Cell[][] = [];
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
          return {
            rows,
            problems: [
              problemAt(
                { file, ...start },
                'csv/open-quote',
                'a quoted cell is never closed',
                'end the cell with "',
              ),
            ],
          };
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
        return {
          rows,
          problems: [
            problemAt(
              place,
              'csv/stray-quote',
              `"${text[offset]}" stands after a closing quote`,
              'double every quote inside a quoted cell',
            ),
          ],
        };
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
    rows.push(row);
    row = [];
    offset += text.startsWith('\r\n', offset) ? 2 : 1;
    line++;
    lineStart = offset;
  }
  return { rows, problems: [] };
}

function endOfCell(text: string, from: number, separator: string): number {
  let end = from;
  while (end < text.length && text[end] !== separator && !isLineEnd(text, end)) end++;
  return end;
}

function isLineEnd(text: string, offset: number): boolean {
  return text[offset] === '\n' || text.startsWith('\r\n', offset);
}

function separatorOf(text: string): string {
  const header = text.replace(/"[^"]*"/g, '').split('\n', 1)[0] ?? '';
  return header.split(';').length > header.split(',').length ? ';' : ',';
}

/** Reads a CSV file with a header line into records. Empty cells are absent; `machine.maker` in the header nests. */
export function readCsv(text: string, file: string): ReadRecords {
  const { rows, problems } = splitCsv(text, file);
  if (problems.length > 0) return { records: [], problems };
  const [header, ...body] = rows;
  if (header === undefined) return { records: [], problems: [] };
  const wrong = headerProblems(header, file);
  if (wrong.length > 0) return { records: [], problems: wrong };

  const found: Problem[] = [];
  const columns = columnsOf(header);
  const records = body
    .filter((cells) => cells.length > 1 || cells[0]?.text !== '')
    .flatMap((cells) => {
      if (cells.length === header.length) return [recordOf(columns, cells, file)];
      const place = { file, line: cells[0]?.line ?? 1, column: 1 };
      found.push(
        problemAt(
          place,
          'csv/ragged',
          `${cells.length} cells where the header has ${header.length}`,
          'put quotes around a cell that contains a separator',
        ),
      );
      return [];
    });
  return { records, problems: found };
}

/** The header of a file, shared by all its records. */
interface Columns {
  readonly header: readonly Cell[];
  readonly names: readonly string[];
  readonly paths: readonly (readonly string[])[];
  readonly index: ReadonlyMap<string, number>;
}

function columnsOf(header: readonly Cell[]): Columns {
  const names = header.map(({ text }) => text.trim());
  return {
    header,
    names,
    paths: names.map((name) => name.split('.')),
    index: new Map(names.map((name, index) => [name, index])),
  };
}

/** A record keeps its cells and finds a place when one is asked for: a ledger has many rows and few problems. */
function recordOf(columns: Columns, cells: readonly Cell[], file: string): RawRecord {
  const { header, names, paths, index } = columns;
  const value: Record<string, RawValue> = {};
  paths.forEach((path, column) => {
    const text = cells[column]?.text.trim() ?? '';
    if (text !== '') setPath(value, path, text);
  });

  const columnAt = (path: Path) => index.get(path.join('.')) ?? -1;
  // A field that has no column is missing from the header, once for all rows.
  const placeOf = (path: Path): Place => {
    const cell = path.length === 0 ? header[0] : cells[columnAt(path)];
    return cell
      ? placeAt(file, path.length === 0 ? { ...cell, column: 1 } : cell)
      : placeOf(path.slice(0, -1));
  };
  const keyPlaceOf = (path: Path): Place => {
    const cell = header[columnAt(path)];
    return cell ? placeAt(file, cell) : placeOf(path.slice(0, -1));
  };
  return { value, columns: names, placeOf, keyPlaceOf };
}

function placeAt(file: string, { line, column }: Cell): Place {
  return { file, line, column };
}

function setPath(record: Record<string, RawValue>, path: readonly string[], text: string): void {
  const [key = '', ...rest] = path;
  if (rest.length === 0) {
    Object.defineProperty(record, key, {
      value: text,
      enumerable: true,
      configurable: true,
      writable: true,
    });
    return;
  }
  const held = Object.hasOwn(record, key) ? record[key] : undefined;
  const inner = typeof held === 'object' ? (held as Record<string, RawValue>) : {};
  Object.defineProperty(record, key, {
    value: inner,
    enumerable: true,
    configurable: true,
    writable: true,
  });
  setPath(inner, rest, text);
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
