import { isMap, isScalar, isSeq, parseDocument } from 'yaml';
import { separatorOf, splitCsv } from '../read/csv.ts';
import type { Insertion } from './insertion.ts';
import { lineEndOf, withoutMark } from './line-end.ts';

/** Where a field goes that a record of a YAML list gets: a line of its own below the record's last field of one line; undefined where the record is written in another way. */
export function fieldInList(
  text: string,
  id: string,
  name: string,
  value: string,
): Insertion[] | undefined {
  const { mark, body } = withoutMark(text);
  const list: unknown = parseDocument(body, { prettyErrors: false }).contents;
  const items: readonly unknown[] = isSeq(list) ? list.items : [];
  const found = items.filter((item) => isMap(item)).find((map) => String(map.get('id')) === id);
  if (found === undefined || found.flow) return undefined;
  const last = found.items.findLast((pair) => isOneLine(pair.value, body));
  if (!last || !isScalar(last.key) || !isScalar(last.value)) return undefined;
  const start = last.key.range?.[0] ?? 0;
  const column = start - (body.lastIndexOf('\n', start - 1) + 1);
  const lineEnd = lineEndOf(body);
  const end = body.indexOf('\n', last.value.range?.[1] ?? start);
  const line = `${' '.repeat(column)}${name}: ${value}`;
  return end === -1
    ? [{ at: body.length + mark.length, text: `${lineEnd}${line}` }]
    : [{ at: end + 1 + mark.length, text: `${line}${lineEnd}` }];
}

function isOneLine(value: unknown, body: string): boolean {
  if (!isScalar(value) || !value.range) return false;
  return !body.slice(value.range[0], value.range[1]).includes('\n');
}

/** Where a value goes into an empty cell of a record's row; a column that the table lacks is added at the right. */
export function cellInTable(
  text: string,
  id: string,
  name: string,
  value: string,
): Insertion[] | undefined {
  const { mark, body } = withoutMark(text);
  const separator = separatorOf(body);
  const { rows } = splitCsv(body, '');
  const starts = [0, ...[...body.matchAll(/\n/g)].map(({ index }) => index + 1)];
  const offset = ({ line, column }: { line: number; column: number }) =>
    (starts[line - 1] ?? 0) + column - 1 + mark.length;
  const [header = [], ...records] = rows;
  const names = header.map((cell) => cell.text.trim());
  const row = records.find((cells) => cells[names.indexOf('id')]?.text === id);
  if (row === undefined) return undefined;
  const column = names.indexOf(name);
  const cell = row[column];
  if (column !== -1 && cell !== undefined) {
    const at = offset(cell);
    // An empty cell in quotes has its place between them.
    return [{ at: text[at] === '"' ? at + 1 : at, text: value }];
  }
  if (column !== -1 || row.length !== header.length) return undefined;
  const ends = rows.map((cells, index) => {
    const next = rows[index + 1]?.[0];
    const end = next ? offset(next) : text.length;
    return { cells, at: text.slice(0, end).replace(/\r?\n$/, '').length };
  });
  return ends.flatMap(({ cells, at }, index) => {
    if (cells.length === 1 && cells[0]?.text === '') return [];
    const put = index === 0 ? name : '';
    return [{ at, text: `${separator}${cells === row ? value : put}` }];
  });
}
