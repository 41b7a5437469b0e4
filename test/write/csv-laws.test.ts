import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRecords } from '../../src/read/content.ts';
import { decodeText } from '../../src/read/text.ts';
import { appendCsvRows, type Fields } from '../../src/write/csv-append.ts';
import { insert, takeOut } from '../../src/write/insertion.ts';
import { additions, lineEnds, onlyGained, typed } from './file-styles.ts';

const NAMES = ['id', 'date', 'amount', 'category', 'parts', 'what'];

/** How spreadsheets and editors leave a table. */
const style = fc.record({
  separator: fc.constantFrom(',', ';', '\t'),
  lineEnd: fc.constantFrom('\n', '\r\n'),
  mark: fc.constantFrom('', '\ufeff'),
  quotes: fc.constantFrom('none', 'all', 'texts'),
  end: fc.constantFrom('none', 'line', 'blank'),
});

type Style = typeof style extends fc.Arbitrary<infer Value> ? Value : never;

const table = fc
  .shuffledSubarray(NAMES, { minLength: 3 })
  .map((names) => (names.includes('id') ? names : ['id', ...names]))
  .chain((names) =>
    fc
      .array(
        fc.tuple(...names.map((name) => (name === 'id' ? fc.constantFrom('c-1', 'c-2') : typed))),
        { maxLength: 4 },
      )
      .map((rows) => [names, ...rows]),
  );

function print(rows: readonly (readonly string[])[], how: Style): string {
  const cell = (text: string, column: number) => {
    const asked = how.quotes === 'all' || (how.quotes === 'texts' && column > 1 && text !== '');
    const quote = asked || text.includes(how.separator) || /["\r\n]|^\s|\s$/.test(text);
    return quote ? `"${text.replaceAll('"', '""')}"` : text;
  };
  const lines = rows.map((row) => row.map(cell).join(how.separator));
  const ends = { none: '', line: how.lineEnd, blank: how.lineEnd + how.lineEnd };
  return how.mark + lines.join(how.lineEnd) + ends[how.end];
}

const recordsOf = (text: string) => {
  const decoded = decodeText(new TextEncoder().encode(text), 'costs.csv');
  const { records, problems } = readRecords(String(decoded), { kind: 'costs', file: 'costs.csv' });
  expect(problems).toEqual([]);
  return records.map(({ value }) => value);
};

const cellsOf = (text: string, separator: string): string[][] =>
  parse(text, {
    delimiter: separator,
    record_delimiter: ['\r\n', '\n'],
    bom: true,
    skip_empty_lines: true,
  });

function add(text: string, rows: readonly Fields[]): string {
  const { insertions } = appendCsvRows(text, rows);
  const after = insert(text, insertions);
  expect(takeOut(after, insertions)).toBe(text);
  return after;
}

describe('rows added to any table', () => {
  it('read back as they were given, and what was there reads as before, here and to another reader', () => {
    fc.assert(
      fc.property(table, style, additions, (rows, how, steps) => {
        let text = print(rows, how);
        for (const step of steps) {
          const after = add(text, step);
          expect(recordsOf(after)).toEqual([...recordsOf(text), ...step]);
          const before = cellsOf(text, how.separator);
          const cells = cellsOf(after, how.separator);
          const kept = cells
            .slice(0, before.length)
            .map((row, at) => row.slice(0, before[at]?.length));
          expect(kept).toEqual(before);
          text = after;
        }
      }),
      { numRuns: 400 },
    );
  });

  it('leave every byte where it is, in the line ends, quotes and mark of the file', () => {
    fc.assert(
      fc.property(table, style, additions, (rows, how, steps) => {
        const [names = []] = rows;
        const before = print(rows, how);
        const known = steps.map((step) =>
          step.map((row) =>
            Object.fromEntries(Object.entries(row).filter(([name]) => names.includes(name))),
          ),
        );
        const after = known.reduce(add, before);
        expect(onlyGained(before, after)).toBe(true);
        expect(after.startsWith(before)).toBe(true);
        if (/\n/.test(before))
          expect([...lineEnds(after)]).toEqual([...lineEnds(before)].slice(0, 1));
        const added = appendCsvRows(before, known[0] ?? []).rows;
        if (how.quotes === 'all')
          expect(added.every((row) => row.startsWith('"') && row.endsWith('"'))).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  it('leave a column empty that has the name of what every object has', () => {
    const text = 'id,what,__proto__,constructor\nc-1,Bolts,,\n';
    expect(appendCsvRows(text, [{ id: 'c-2', what: 'Nuts' }]).rows).toEqual(['c-2,Nuts,,']);
  });

  it('bring the columns that the table lacks, in its own style and at the right', () => {
    const text = '\ufeff"id";"what"\r\n"c-1";"two\nlines"\r\n\r\n"c-2";"x"';
    expect(add(text, [{ id: 'c-3', what: 'y', note: 'a "b"' }])).toBe(
      '\ufeff"id";"what";"note"\r\n"c-1";"two\nlines";""\r\n\r\n"c-2";"x";""\r\n"c-3";"y";"a ""b"""\r\n',
    );
  });
});
