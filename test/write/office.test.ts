import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { inContentFolder } from '../check/content-folder.ts';
import { added, addRows, costRow, pressOf, refused } from './press-ledger.ts';

const LEDGER = 'press/ledger/costs.csv';
const exported = (name: string) => readFile(`test/write/office/${name}.csv`);

describe('a table that LibreOffice exported', () => {
  it.each([
    ['comma', ','],
    ['semicolon-all-quoted', ';'],
    ['tab', '\t'],
  ])('grows by a row in its own style and keeps every byte: %s', async (name, separator) => {
    const before = await exported(name);
    await inContentFolder({ [LEDGER]: before }, async (content) => {
      const [row] = await added(addRows(content, costRow('Wire; soft, "black"')));
      const after = await readFile(join(content, LEDGER));
      expect(after.subarray(0, before.length)).toEqual(before);
      const cells: string[][] = parse(after, { delimiter: separator });
      expect(cells).toHaveLength(5);
      expect(cells[4]?.slice(0, 6)).toEqual([
        ...[row?.id, '2025-05-01', '12.50', 'tool', 'rebuild', 'Wire; soft, "black"'],
      ]);
      const { costs } = (await pressOf(content)).lists;
      expect(costs.map(({ value }) => value.what)).toEqual([
        ...['Sling, two metres, "rated" for a tonne', 'Brass, two lines\nin one cell'],
        ...['Blech 1¼ mm für die Tür', 'Wire; soft, "black"'],
      ]);
      if (name === 'semicolon-all-quoted')
        expect(after.subarray(before.length).toString()).toMatch(/^("[^"]*(""[^"]*)*";?)+\r?\n$/);
    });
  });

  it.each(['utf-16', 'windows-1252'])(
    'is refused in another encoding, untouched: %s',
    async (name) => {
      const before = await exported(name);
      await inContentFolder({ [LEDGER]: before }, async (content) => {
        const told = await refused(addRows(content, costRow('Wire')));
        expect(told.join('\n')).toContain('the file is not UTF-8');
        expect(await readFile(join(content, LEDGER))).toEqual(before);
      });
    },
  );
});
