import { stringify } from 'yaml';
import { readRecords } from '../../src/read/content.ts';
import { splitCsv } from '../../src/read/csv.ts';
import type { RawValue } from '../../src/read/raw.ts';
import type { Draw } from './draw.ts';

/** Files by path; one that is rewritten may become two, or get another ending. */
type Texts = Readonly<Record<string, string>>;
type Rewriting = (file: string, text: string, draw: Draw) => Texts;

const quoted = (cell: string) => `"${cell.replaceAll('"', '""')}"`;
const plain = (cell: string) => (/[",\r\n]/.test(cell) ? quoted(cell) : cell);

const rowsOf = (file: string, text: string) =>
  splitCsv(text, file).rows.map((row) => row.map((cell) => cell.text));

const tableOf = (rows: readonly (readonly string[])[], write = plain) =>
  rows.map((row) => `${row.map(write).join(',')}\n`).join('');

const ofTable: readonly Rewriting[] = [
  (file, text) => ({ [file]: tableOf(rowsOf(file, text), quoted) }),
  (file, text, draw) => ({
    [file]: tableOf(rowsOf(file, text), (cell) =>
      draw.below(2) === 0 ? quoted(cell) : plain(cell),
    ),
  }),
  (file, text, draw) => {
    const rows = rowsOf(file, text);
    const order = (rows[0] ?? []).map((_, index) => ({ index, key: draw.below(1_000) }));
    order.sort((a, b) => a.key - b.key);
    return { [file]: tableOf(rows.map((row) => order.map(({ index }) => row[index] ?? ''))) };
  },
  (file, text) => ({ [file]: tableOf(rowsOf(file, text)).replaceAll('\n', '\r\n') }),
  (file, text) => ({ [file]: `${text}\n\n` }),
  (file, text) => ({ [file]: text.replace(/\n$/, '') }),
  (file, text) => ({
    [file]: rowsOf(file, text)
      .map((row) => `${row.map((cell) => (/[";\n]/.test(cell) ? quoted(cell) : cell)).join(';')}\n`)
      .join(''),
  }),
  (file, text, draw) => {
    const [header = [], ...rows] = rowsOf(file, text);
    const at = draw.below(rows.length + 1);
    return {
      [file]: tableOf([header, ...rows.slice(0, at)]),
      [file.replace(/(-\w+)?\.csv$/, '-second-half.csv')]: tableOf([header, ...rows.slice(at)]),
    };
  },
  (file, text) => {
    const { records } = readRecords(text, { kind: 'hours', file });
    return {
      [file.replace(/\.csv$/, '-as-list.yaml')]: stringify(records.map(({ value }) => value)),
      [file]: '',
    };
  },
];

const ofList: readonly Rewriting[] = [
  (file, text) => ({ [file]: text.replace(/^- /gm, '# a comment: "with" [signs]\n\n- ') }),
  (file, text) => ({ [file]: `${text}\n# the end\n\n` }),
  (file, text) => ({ [file]: text.replaceAll('\n', '\r\n') }),
  (file, text) => ({ [file]: `---\n${text}` }),
  (file, text) => ({ [file]: text.replace(/^/gm, '  ') }),
  (file, text, draw) => {
    const records = text.split(/^(?=- )/m);
    const at = draw.below(records.length + 1);
    return {
      [file]: records.slice(0, at).join(''),
      [file.replace(/(-\w+)?\.yaml$/, '-second-half.yaml')]: records.slice(at).join(''),
    };
  },
  (file, text) => {
    const { records } = readRecords(text, { kind: 'hours', file });
    const table = asTable(records.map(({ value }) => value));
    return table === undefined
      ? { [file]: text }
      : { [file.replace(/\.yaml$/, '-as-table.csv')]: table, [file]: '' };
  },
];

const ofEither: readonly Rewriting[] = [(file, text) => ({ [file]: `\ufeff${text}` })];

/** Records as a table, where all their fields are texts or lists of words. */
function asTable(records: readonly RawValue[]): string | undefined {
  const header = [...new Set(records.flatMap((record) => Object.keys(record)))];
  const cellOf = (value: RawValue | undefined): string | undefined => {
    if (value === undefined) return '';
    if (typeof value === 'string') return value;
    if (!Array.isArray(value)) return undefined;
    const words = value as readonly RawValue[];
    return words.every((word) => typeof word === 'string' && /^\S+$/.test(word))
      ? words.join(' ')
      : undefined;
  };
  const rows = records.map((record) =>
    header.map((name) => cellOf((record as Readonly<Record<string, RawValue>>)[name])),
  );
  if (rows.flat().includes(undefined)) return undefined;
  return tableOf([header, ...rows.map((row) => row.map((cell) => cell ?? ''))]);
}

/** The same content in other words: what a spreadsheet, an editor or a tidy mind might do to a file. */
export function rewrite(file: string, text: string, draw: Draw): Texts {
  const single = /(site|project|imports)\.yaml$|\.mdx$/.test(file);
  if (single) return draw.of([...ofEither, ofList[2] as Rewriting])(file, text, draw);
  return draw.of([...ofEither, ...(file.endsWith('.csv') ? ofTable : ofList)])(file, text, draw);
}
