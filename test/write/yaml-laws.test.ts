import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRecords } from '../../src/read/content.ts';
import { decodeText } from '../../src/read/text.ts';
import type { Fields } from '../../src/write/csv-append.ts';
import { insert, takeOut } from '../../src/write/insertion.ts';
import { fieldNames } from '../../src/write/kind-fields.ts';
import { appendYamlRows } from '../../src/write/yaml-append.ts';
import { additions, costFields, onlyGained } from './file-styles.ts';

const style = fc.record({
  lineEnd: fc.constantFrom('\n', '\r\n'),
  mark: fc.constantFrom('', '\ufeff'),
  indent: fc.constantFrom('', '  '),
  gap: fc.constantFrom(' ', '   '),
  rows: fc.constantFrom('block', 'braces', 'brackets'),
  lists: fc.constantFrom('flow', 'block', 'text'),
  quotes: fc.constantFrom('double', 'block'),
  spaced: fc.boolean(),
  comments: fc.boolean(),
  head: fc.constantFrom(
    '',
    '# yaml-language-server: $schema=../.schema/costs.json\n',
    '---\n',
    '# a\n\n---\n',
  ),
  end: fc.constantFrom('none', 'line', 'blank', 'comment', 'comment without an end', 'document'),
});

type Style = typeof style extends fc.Arbitrary<infer Value> ? Value : never;

function print(rows: readonly Fields[], how: Style): string {
  const flow = (row: Fields) =>
    `{ ${Object.entries(row)
      .map(([name, text]) => `${name}: ${JSON.stringify(text)}`)
      .join(', ')} }`;
  const item = (row: Fields, index: number) => {
    const dash = `${how.indent}-${how.gap}`;
    const note = how.comments ? ` # row ${index}` : '';
    if (how.rows === 'braces') return `${dash}${flow(row)}${note}`;
    const inner = `${how.indent} ${how.gap}`;
    const lines = Object.entries(row).map(
      ([name, text]) => `${name}: ${value(name, text, inner, how)}`,
    );
    const own = how.comments ? `\n${inner}# of this row` : '';
    return `${dash}${lines.join(`\n${inner}`)}${own}`;
  };
  const between = (how.comments ? '\n# between\n' : '\n') + (how.spaced ? '\n' : '');
  const list =
    how.rows === 'brackets'
      ? `[\n  ${rows.map(flow).join(how.comments ? ', # told\n  ' : ',\n  ')}${how.comments ? ' # last' : ''}\n]`
      : rows.map(item).join(between);
  const ends = {
    none: '',
    line: '\n',
    blank: '\n\n',
    comment: '\n# the end\n',
    'comment without an end': '\n  # the end',
    document: '\n...\n# after\n',
  };
  const text = how.head + list + (list === '' ? '' : ends[how.end]);
  return how.mark + text.replaceAll('\n', how.lineEnd);
}

function value(name: string, text: string, inner: string, how: Style): string {
  if (name === 'parts' && how.lists === 'flow') return `[${text.replaceAll(' ', ', ')}]`;
  if (name === 'parts' && how.lists === 'block')
    return text
      .split(' ')
      .map((id) => `\n${inner}  - ${id}`)
      .join('');
  const plain = /^[a-z]+$/.test(text) && text !== 'null';
  if (plain) return text;
  return how.quotes === 'block' && /^[a-zö%,; ]+$/i.test(text)
    ? `>-\n${inner}  ${text}`
    : JSON.stringify(text);
}

const recordsOf = (text: string) => {
  const decoded = decodeText(new TextEncoder().encode(text), 'costs.yaml');
  const { records, problems } = readRecords(String(decoded), { kind: 'costs', file: 'costs.yaml' });
  expect(problems).toEqual([]);
  return records.map(({ value: fields }) =>
    Object.fromEntries(
      Object.entries(fields).map(([name, held]) => [
        name,
        Array.isArray(held) ? held.join(' ') : held,
      ]),
    ),
  );
};

function add(text: string, rows: readonly Fields[]): string {
  const { insertions } = appendYamlRows(text, rows, fieldNames('costs'));
  const after = insert(text, insertions);
  expect(takeOut(after, insertions)).toBe(text);
  expect(onlyGained(text, after)).toBe(true);
  return after;
}

const ledger = fc.array(costFields, { maxLength: 4 });

describe('rows added to any list', () => {
  it('read back as they were given, and what was there reads as before', () => {
    fc.assert(
      fc.property(ledger, style, additions, (rows, how, steps) => {
        let text = print(rows, how);
        for (const step of steps) {
          const after = add(text, step);
          expect(recordsOf(after)).toEqual([...recordsOf(text), ...step]);
          text = after;
        }
      }),
      { numRuns: 150 },
    );
  });

  it('leave comments and line ends as they are', () => {
    fc.assert(
      fc.property(ledger, style, additions, (rows, how, steps) => {
        const before = print(rows, how);
        const after = steps.reduce(add, before);
        const comments = (text: string) => text.match(/^\s*# .*$|# row \d+|# told|# last/gm) ?? [];
        expect(comments(after).length).toBeGreaterThanOrEqual(comments(before).length);
        if (how.lineEnd === '\r\n' && before.includes('\n')) expect(after).not.toMatch(/[^\r]\n/);
        else if (!before.includes('\r')) expect(after).not.toContain('\r');
      }),
      { numRuns: 80 },
    );
  });
});
