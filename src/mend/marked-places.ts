import { marksOf } from '../mark/ledger-marks.ts';
import { type RowKind, rowKinds } from '../model/kinds.ts';
import type { ReadContent } from '../read/content.ts';
import { readCsv } from '../read/csv.ts';
import type { Problem } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import { readYamlList } from '../read/yaml.ts';

/** Whether a problem stands in a row that has been marked: what readers hold a proof of is corrected by a new row. */
export function isInMarkedRow(
  content: ReadContent,
  { file, line }: Problem,
  text: string,
): boolean {
  const [id = '', ...path] = file.split('/');
  const kind = /^([a-z]+)/.exec(path.at(-1) ?? '')?.[1];
  const project = content.projects.find((one) => one.id === id);
  if (project === undefined || !isRowKind(kind) || path[0] === 'entries') return false;
  const marks = marksOf(project);
  // Which rows are marked is not known then, so that none is touched.
  if ('problems' in marks) return true;
  const row = rowAt(recordsOf(text, file), line);
  return marks.rows.some((marked) => marked.kind === kind && marked.id === row);
}

function isRowKind(kind: string | undefined): kind is RowKind {
  return (rowKinds as readonly string[]).includes(kind ?? '');
}

function recordsOf(text: string, file: string): readonly RawRecord[] {
  return (file.endsWith('.csv') ? readCsv(text, file) : readYamlList(text, file)).records;
}

/** The id of the record that a line belongs to: of the last that starts on it or above it. */
function rowAt(records: readonly RawRecord[], line: number): string | undefined {
  const found = records.findLast((record) => startOf(record) <= line)?.value;
  const { id } = (found ?? {}) as { readonly id?: unknown };
  return typeof id === 'string' ? id.trim() : undefined;
}

function startOf(record: RawRecord): number {
  const fields = Object.keys(record.value as object);
  return Math.min(...fields.map((field) => record.placeOf([field]).line));
}
