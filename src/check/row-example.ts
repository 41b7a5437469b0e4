import { stringify } from 'yaml';
import type { RawRecord, RawValue } from '../read/raw.ts';

/** A row as its file would have it: a line of CSV under its header, or an item of a YAML list. What is not in it is left empty. */
export function rowExample(
  fields: Readonly<Record<string, RawValue>>,
  { columns }: Pick<RawRecord, 'columns'>,
): string {
  if (columns === undefined) return stringify([fields], { lineWidth: 0 }).trimEnd();
  const names = [...new Set([...columns, ...Object.keys(fields)])];
  return [names, names.map((name) => cellOf(fields[name] ?? ''))]
    .map((row) => row.join(','))
    .join('\n');
}

/** RFC 4180 §2: quotes around what holds a comma, a quote or a line end; a quote doubled. */
function cellOf(value: RawValue): string {
  const text = Array.isArray(value) ? value.join(' ') : String(value);
  return /[",;\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
