import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitCsv } from '../../src/read/csv.ts';

const cell = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 8 }),
  fc.string({ unit: fc.constantFrom('a', ' ', '"', ',', ';', '\n', '\r\n', '\r'), maxLength: 6 }),
);

/** A table whose rows have as many cells as its header. */
const table = fc.integer({ min: 1, max: 5 }).chain((width) =>
  fc.array(fc.array(cell, { minLength: width, maxLength: width }), {
    minLength: 1,
    maxLength: 6,
  }),
);

const layout = fc.record({
  separator: fc.constantFrom(',', ';'),
  lineEnd: fc.constantFrom('\n', '\r\n'),
  endsInLine: fc.boolean(),
  quotesAll: fc.boolean(),
});

type Layout = typeof layout extends fc.Arbitrary<infer Value> ? Value : never;

/** Writes a table as RFC 4180 has it, in one of the ways that programs do. */
function print(rows: readonly (readonly string[])[], how: Layout): string {
  const lines = rows.map((cells) =>
    cells
      .map((text) =>
        how.quotesAll || /["\r\n,;]/.test(text) || (text === '' && cells.length === 1)
          ? `"${text.replaceAll('"', '""')}"`
          : text,
      )
      .join(how.separator),
  );
  return lines.join(how.lineEnd) + (how.endsInLine ? how.lineEnd : '');
}

describe('CSV', () => {
  it('that is printed and read again is the same table', () => {
    fc.assert(
      fc.property(table, layout, (rows, how) => {
        // One column shows no separator, and what shows none is read with commas.
        fc.pre(how.separator === ',' || (rows[0]?.length ?? 0) > 1);
        const { rows: read, problems } = splitCsv(print(rows, how), 'a.csv');
        expect(problems).toEqual([]);
        expect(read.map((cells) => cells.map(({ text }) => text))).toEqual(rows);
      }),
      { numRuns: 1000 },
    );
  });

  it('is read as another reader of RFC 4180 reads it', () => {
    fc.assert(
      fc.property(table, layout, (rows, how) => {
        fc.pre(how.separator === ',' || (rows[0]?.length ?? 0) > 1);
        const text = print(rows, how);
        const other: string[][] = parse(text, {
          delimiter: how.separator,
          record_delimiter: ['\r\n', '\n'],
        });
        const own = splitCsv(text, 'a.csv').rows.map((cells) => cells.map((one) => one.text));
        expect(own).toEqual(other);
      }),
      { numRuns: 1000 },
    );
  });

  it('has every cell at the place where its text starts', () => {
    fc.assert(
      fc.property(table, layout, (rows, how) => {
        const text = print(rows, { ...how, separator: ',' });
        const lines = text.split('\n');
        for (const { text: value, line, column } of splitCsv(text, 'a.csv').rows.flat()) {
          const rest = lines
            .slice(line - 1)
            .join('\n')
            .slice(column - 1);
          const quoted = `"${value.replaceAll('"', '""')}"`;
          expect(rest.startsWith('"') ? rest.startsWith(quoted) : rest.startsWith(value)).toBe(
            true,
          );
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('of any text is read to the end or refused at a place inside it', () => {
    const any = fc.string({
      unit: fc.constantFrom('a', '"', ',', ';', '\n', '\r', ' '),
      maxLength: 30,
    });
    fc.assert(
      fc.property(any, (text) => {
        const { rows, problems } = splitCsv(text, 'a.csv');
        const lines = text.split('\n');
        for (const { line, column } of [...problems, ...rows.flat()]) {
          expect(lines[line - 1]?.length ?? -1).toBeGreaterThanOrEqual(column - 1);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
