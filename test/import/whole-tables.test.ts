import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lineOutcomes } from '../../src/import/line-outcomes.ts';
import { countOutcomes, type Outcome } from '../../src/import/outcome.ts';
import { readTable, type Table } from '../../src/import/table.ts';
import type { ImportMapping } from '../../src/model/kinds.ts';

const MAPPING: ImportMapping = {
  id: 'bank',
  kind: 'costs',
  encoding: 'utf-8',
  separator: ';',
  columns: { date: ['Date'], what: ['Text'], amount: ['Amount'], key: ['Ref'] },
  dates: 'DD.MM.YYYY',
  decimals: '1.234,56',
  moneyOut: 'negative',
  fixed: { phase: 'rebuild', category: 'other' },
  rules: [
    { has: ['lunch'], skip: 'food' },
    { money: 'in', skip: 'not of this machine' },
  ],
};

const date = fc.constantFrom('01.03.2025', '02.03.2025', '31.02.2025', '2025-03-01', '');
const text = fc.constantFrom('Bolts', 'Lunch', 'a;b', 'say "hi"', 'two\nlines', '', 'ü€');
const amount = fc.constantFrom('-1,00', '-1.234,50', '2,00', '1.00', '0,00', '');
const ref = fc.constantFrom('', '', '', 'r1', 'r2', 'r3');
const quoted = (cell: string) => (/[;"\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
const sound = fc.tuple(date, text, amount, ref).map((cells) => cells.map(quoted).join(';'));
const odd = fc.oneof(
  fc.string({ unit: fc.constantFrom(...'a";\n'), maxLength: 12 }),
  fc.constantFrom('', ';;;', '01.03.2025;Bolts', '01.03.2025;"Bolts;-1,00;', 'Total;;-9,00;;'),
);
const tables = fc.record({
  lines: fc.array(fc.oneof({ arbitrary: sound, weight: 4 }, { arbitrary: odd, weight: 1 }), {
    maxLength: 25,
  }),
  end: fc.constantFrom('\n', '\r\n'),
  last: fc.boolean(),
  bom: fc.constantFrom('', '\ufeff'),
});

function tableOf({
  lines,
  end,
  last,
  bom,
}: typeof tables extends fc.Arbitrary<infer T> ? T : never): Table {
  const body = ['Date;Text;Amount;Ref', ...lines].join(end) + (last ? end : '');
  const table = readTable(Buffer.from(bom + body), MAPPING);
  if ('missing' in table) throw new Error(table.missing);
  return table;
}

const addedOf = (outcomes: readonly Outcome[]) =>
  outcomes.filter((outcome) => outcome.is === 'added');

test('Of any table, lines added, known, skipped and refused add up, and a second import adds nothing', () => {
  const seen = { added: 0, known: 0, skipped: 0, refused: 0, read: 0 };
  fc.assert(
    fc.property(tables, (one) => {
      const { data } = tableOf(one);
      const first = lineOutcomes(data, MAPPING, { imported: new Map(), rowIds: new Set() });
      const counts = countOutcomes(first, data.length);
      expect(counts.added + counts.known + counts.skipped + counts.refused).toBe(data.length);
      expect(counts.known).toBe(0);
      const keys = addedOf(first).map(({ key }) => key);
      expect(new Set(keys).size).toBe(keys.length);

      const imported = new Map(
        keys.map((key, index) => [key, { id: `c-${index}`, pending: false }]),
      );
      const rowIds = new Set([...imported.values()].map(({ id }) => id));
      const again = countOutcomes(lineOutcomes(data, MAPPING, { imported, rowIds }), data.length);
      expect(again).toEqual({ ...counts, added: 0, known: counts.added });
      for (const is of Object.keys(seen) as (keyof typeof seen)[])
        seen[is] += counts[is] + again[is];
    }),
    { numRuns: 400, seed: 11 },
  );
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(100);
});

test('Every line with a filled cell is among those that are counted', () => {
  fc.assert(
    fc.property(tables, (one) => {
      const { data, above, header, blank } = tableOf(one);
      expect(above).toHaveLength(0);
      const bytes = Buffer.concat([header.bytes, ...data.map((line) => line.bytes)]);
      const body = ['Date;Text;Amount;Ref', ...one.lines].join(one.end);
      const filled = (text: string) => text.replace(/[\s;"\ufeff]/g, '').length;
      expect(filled(bytes.toString())).toBe(filled(body));
      expect(blank).toBeGreaterThanOrEqual(0);
    }),
  );
});
