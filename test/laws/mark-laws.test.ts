import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareRow } from '../../src/mark/compare.ts';
import { type FoundRow, inOrderOfRecording } from '../../src/mark/ledger-rows.ts';
import { parseMarkedRow } from '../../src/mark/marked-rows.ts';
import { makeSecret, saltOf } from '../../src/mark/salts.ts';
import { writtenFields } from '../../src/mark/written-fields.ts';
import { PlaceMap } from '../../src/read/raw.ts';
import type { Day } from '../../src/time/day.ts';
import { canonicalJson } from '../../src/trust/canonical-json.ts';
import { rowText } from '../../src/trust/row-hash.ts';
import { inContentFolder } from '../check/content-folder.ts';
import { fixedBytes, markPress, problemsIn } from '../check/marked-content.ts';

const secret = makeSecret(1, fixedBytes);
const salt = saltOf(secret, 'costs', 'c-1');
const word = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 });
const row = fc.record({
  id: fc.constant('c-1'),
  date: fc.constant('2025-03-01'),
  amount: fc.constantFrom('12.50', '12.5', '1200 EUR'),
  what: word,
  parts: fc.constantFrom('gib', 'gib nut', ' gib  nut '),
  supplier: word,
  withhold: fc.constantFrom('', 'amount', 'amount what'),
});
type Row = Readonly<Record<string, string>>;

const fieldsOf = (value: Row) =>
  writtenFields('costs', new PlaceMap('costs.csv').record(value, []), { hashes: new Map() });

/** What is found to have changed from one row to another of the same id. */
function changeOf(before: Row, after: Row) {
  const text = rowText({ kind: 'costs', id: 'c-1', serial: 1, salt, ...fieldsOf(before) });
  const marked = parseMarkedRow(text, 0);
  if (marked === undefined) throw new Error(`not read: ${text}`);
  const found = { kind: 'costs', id: 'c-1' } as FoundRow;
  return compareRow(found, fieldsOf(after), marked, [secret]);
}

test('a row is found changed when its text as written is another, and only then', () => {
  const field = fc.constantFrom('date', 'amount', 'what', 'parts', 'supplier', 'withhold');
  const edit = fc.record({
    field,
    at: fc.nat(20),
    drop: fc.nat(1),
    put: fc.string({ maxLength: 1 }),
  });
  fc.assert(
    fc.property(row, edit, (before, { field, at, drop, put }) => {
      const text = before[field as keyof typeof before];
      const changed = text.slice(0, at) + put + text.slice(at + drop);
      const after = { ...before, [field]: changed };
      const same = canonicalJson(fieldsOf(before)) === canonicalJson(fieldsOf(after));
      expect(changeOf(before, after) === undefined).toBe(same);
    }),
    { numRuns: 500 },
  );
});

test('what changed of a public field is told with what it was and what it is', () => {
  fc.assert(
    fc.property(row, row, (before, after) => {
      const was = fieldsOf(before).public;
      const is = fieldsOf(after).public;
      for (const change of changeOf(before, after)?.fields ?? [])
        expect([change.was, change.is]).toEqual([was[change.field], is[change.field]]);
    }),
  );
});

test('any other character in a marked row of the press is caught by the check', async () => {
  await inContentFolder({}, async (folder) => {
    await markPress(folder, '2025-05-01');
    const passed: string[] = [];
    for (const name of ['costs.csv', 'readings.csv']) {
      const file = join(folder, 'press/ledger', name);
      const text = await readFile(file, 'utf8');
      for (let at = text.indexOf('\n') + 1; at < text.length; at++) {
        if (text[at] === '\n') continue;
        const other = text[at] === '7' ? '8' : '7';
        const changed = text.slice(0, at) + other + text.slice(at + 1);
        await writeFile(file, changed);
        const problems = await problemsIn(folder);
        if (problems.every(({ level }) => level !== 'error'))
          passed.push(changed.slice(at - 9, at + 9));
      }
      await writeFile(file, text);
    }
    expect(passed).toEqual([]);
  });
});

test('the order of recording keeps the order of each file, and goes by day where files are in order of day', () => {
  const days = fc.array(fc.constantFrom('2025-01-01', '2025-01-02', '2025-01-03', undefined));
  fc.assert(
    fc.property(fc.array(days, { maxLength: 4 }), fc.boolean(), (files, sorted) => {
      const rows = files.flatMap((list, file) =>
        (sorted ? list.filter((day) => day !== undefined).sort() : list).map(
          (day, index) =>
            ({ file: `${file}`, id: `${file}-${index}`, day: day as Day }) as FoundRow,
        ),
      );
      const ordered = inOrderOfRecording(rows);
      expect([...ordered].sort((a, b) => rows.indexOf(a) - rows.indexOf(b))).toEqual(rows);
      for (const { file } of rows)
        expect(ordered.filter((item) => item.file === file)).toEqual(
          rows.filter((item) => item.file === file),
        );
      const inDays = ordered.map(({ day }) => day as string);
      if (sorted) expect(inDays).toEqual([...inDays].sort());
    }),
  );
});
