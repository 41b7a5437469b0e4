import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { csvOf } from '../../src/publish/csv.ts';

const columns = ['a', 'b'].map((name) => ({ name, type: 'string', description: '' }) as const);

describe('csvOf', () => {
  // The examples of RFC 4180 §2.5 to 2.7: what must stand in quotes, and a quote that stands twice.
  test('puts commas, quotes and line ends in quotes, and doubles a quote', () => {
    const rows = [
      ['aaa', 'b,b'],
      ['b\r\nbb', 'b"bb'],
    ];
    expect(csvOf({ columns, rows })).toBe('a,b\r\naaa,"b,b"\r\n"b\r\nbb","b""bb"\r\n');
  });

  test('writes numbers and flags as they are, and nothing for a cell without a value', () => {
    const rows = [
      [-12, true],
      [undefined, false],
    ];
    expect(csvOf({ columns, rows })).toBe('a,b\r\n-12,true\r\n,false\r\n');
  });

  test('writes a header when there are no rows', () => {
    expect(csvOf({ columns, rows: [] })).toBe('a,b\r\n');
  });

  test('is read back by csv-parse as it was, whatever the text', () => {
    const text = fc.string({
      unit: fc.constantFrom('a', 'ß', '"', ',', '\n', '\r', ' ', ';', '😀'),
    });
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text)), (rows) => {
        const read = parse(csvOf({ columns, rows }), { relax_column_count: false });
        expect(read).toEqual([['a', 'b'], ...rows]);
      }),
    );
  });
});
