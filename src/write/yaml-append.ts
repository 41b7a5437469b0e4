import { isScalar, isSeq, parseDocument, type YAMLMap, type YAMLSeq } from 'yaml';
import type { Fields } from './csv-append.ts';
import type { Appended } from './insertion.ts';
import { lineEndOf, withoutMark } from './line-end.ts';
import { columnOf, habitOf, mapsOf } from './yaml-habits.ts';
import { blockRow, flowRow, type Layout } from './yaml-row.ts';

/** What a schema says of a kind's fields, as far as writing goes. */
export interface FieldNames {
  /** All names, in the order of the schema. */
  readonly order: readonly string[];
  /** Whether a field holds several values, which are parted by spaces in text. */
  readonly isList: (name: string) => boolean;
}

/** Rows at the end of a YAML list, in its own indentation, order of fields and quotes. */
export function appendYamlRows(
  text: string,
  added: readonly Fields[],
  fields: FieldNames,
): Appended {
  const { mark, body } = withoutMark(text);
  const { contents } = parseDocument(body, { keepSourceTokens: true, prettyErrors: false });
  const list = isSeq(contents) ? contents : undefined;
  const maps = mapsOf(list);
  const layout: Layout = {
    ...layoutOf(list, body),
    isList: fields.isList,
    habit: (name) => habitOf(maps, name, body),
    order: (row) => inOrder(Object.keys(row), keysOf(maps.at(-1)), fields.order),
  };
  const shift = mark.length;
  if (list?.flow) {
    const rows = added.map((row) => flowRow(row, layout));
    const last = list.items.at(-1) as YAMLMap | undefined;
    const at = (last?.range?.[1] ?? (list.range?.[0] ?? 0) + 1) + shift;
    const gap = body.slice(list.range?.[0], list.range?.[1]).includes('\n')
      ? layout.lineEnd + ' '.repeat(Math.max(1, columnOf(last?.range?.[0] ?? 2, body)))
      : ' ';
    const joined = rows.join(`,${gap}`);
    return { insertions: [{ at, text: last ? `,${gap}${joined}` : joined }], rows };
  }
  const rows = added.map((row) => blockRow(row, layout, maps.at(-1)?.flow === true));
  const at = endOf(body, contents?.range?.[1] ?? 0);
  const close = at > 0 && body[at - 1] !== '\n' ? layout.lineEnd : '';
  const between = isSpaced(list, body) ? layout.lineEnd : '';
  const first = close + (between !== '' && !/\n\r?\n$/.test(body.slice(0, at)) ? between : '');
  return {
    insertions: [{ at: at + shift, text: first + rows.join(between) }],
    rows: rows.map((row) => row.replace(/\r?\n$/, '')),
  };
}

/** Before the mark that ends a document, where there is one, and else the end of the text: comments there stay with the row above. */
function endOf(body: string, from: number): number {
  const mark = /^\.\.\.(?=\s|$)/m.exec(body.slice(from));
  return mark ? from + mark.index : body.length;
}

function layoutOf(list: YAMLSeq | undefined, body: string) {
  const last = list?.items.at(-1) as YAMLMap | undefined;
  const start = last?.range?.[0] ?? 0;
  const dash = dashes(list).at(-1);
  const lineEnd = lineEndOf(body);
  const usual = { lineEnd, indent: '', gap: ' ', padded: true };
  if (list === undefined || list.flow || dash === undefined || last === undefined) return usual;
  const between = body.slice(dash + 1, start);
  const brackets = last.flow ? body[start + 1] === ' ' : true;
  const indent = ' '.repeat(columnOf(dash, body));
  return { lineEnd, indent, gap: /^ +$/.test(between) ? between : ' ', padded: brackets };
}

/** Where the dash of each row stands. */
function dashes(list: YAMLSeq | undefined): number[] {
  const token = list?.srcToken;
  if (token?.type !== 'block-seq') return [];
  return token.items.flatMap(
    ({ start }) => start.find(({ type }) => type === 'seq-item-ind')?.offset ?? [],
  );
}

/** Whether the last two rows have an empty line between them. */
function isSpaced(list: YAMLSeq | undefined, body: string): boolean {
  const dash = dashes(list).at(-1);
  if (dash === undefined || (list?.items.length ?? 0) < 2) return false;
  return /\n[ \t]*\r?\n(?:[ \t]*#[^\n]*\n)*[ \t]*$/.test(body.slice(0, dash));
}

function keysOf(row: YAMLMap | undefined): string[] {
  return (row?.items ?? []).flatMap(({ key }) => (isScalar(key) ? [String(key.value)] : []));
}

/** The order of the row before; what that one lacks comes after the field that the schema has before it. */
function inOrder(
  names: readonly string[],
  before: readonly string[],
  order: readonly string[],
): string[] {
  const result = before.filter((name) => names.includes(name));
  const rank = (name: string) => (order.includes(name) ? order.indexOf(name) : order.length);
  const rest = names.filter((name) => !result.includes(name)).sort((a, b) => rank(a) - rank(b));
  for (const name of rest) {
    const after = result.findLastIndex((held) => rank(held) < rank(name));
    result.splice(after + 1, 0, name);
  }
  return result;
}
