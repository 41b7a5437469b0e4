import type { ListKind } from '../model/kinds.ts';
import { readRecords } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord, RawValue } from '../read/raw.ts';
import { decodeText } from '../read/text.ts';
import type { Fields } from './csv-append.ts';
import { fieldNames } from './kind-fields.ts';

/** A file's bytes before and after an addition, and what was added. */
export interface Changed {
  readonly kind: ListKind;
  readonly file: string;
  readonly before: Uint8Array;
  readonly after: Uint8Array;
  readonly rows: readonly Fields[];
}

/** The lines of the added rows, or why the file can't be added to: all that was there reads as before, and the rows as they were given. */
export function readBack(changed: Changed): { readonly lines: number[] } | { problem: Problem } {
  const { kind, file, rows } = changed;
  const was = recordsOf(changed.before, changed);
  const is = recordsOf(changed.after, changed);
  if ('line' in was) return { problem: was };
  if ('line' in is) return { problem: is };
  const added = is.slice(was.length);
  const { isList } = fieldNames(kind);
  const asBefore = was.every(({ value }, index) => same(value, is[index]?.value));
  const asGiven =
    added.length === rows.length &&
    added.every(({ value }, index) => same(flat(value, isList), given(rows[index] ?? {}, isList)));
  if (asBefore && asGiven) return { lines: added.map(lineOf) };
  return {
    problem: problemAt(
      { file, line: is.at(-1)?.placeOf([]).line ?? 1, column: 1 },
      'write/file',
      'a row added to this file would not be read as it was given',
      'add it by hand, or to another file of its kind',
    ),
  };
}

function recordsOf(bytes: Uint8Array, { kind, file }: Changed): readonly RawRecord[] | Problem {
  const text = decodeText(bytes, file);
  if (typeof text !== 'string') return text;
  const { records, problems } = readRecords(text, { kind, file });
  return problems[0] ?? records;
}

function lineOf(record: RawRecord): number {
  return record.placeOf(record.columns === undefined ? [] : ['id']).line;
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

type IsList = (name: string) => boolean;

function given(row: Fields, isList: IsList): [string, string][] {
  return sorted(Object.entries(row).map(([name, text]) => [name, folded(name, text, isList)]));
}

function flat(value: RawValue, isList: IsList, prefix = ''): [string, string][] {
  if (typeof value === 'string' || Array.isArray(value)) {
    const text = typeof value === 'string' ? value : value.join(' ');
    return [[prefix, folded(prefix, text, isList)]];
  }
  return sorted(
    Object.entries(value).flatMap(([name, inner]) =>
      flat(inner as RawValue, isList, prefix === '' ? name : `${prefix}.${name}`),
    ),
  );
}

function folded(name: string, text: string, isList: IsList): string {
  return isList(name) ? text.trim().split(/\s+/).join(' ') : text;
}

function sorted(fields: [string, string][]): [string, string][] {
  return fields.sort(([a], [b]) => (a < b ? -1 : 1));
}
