import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { undoLast } from '../../src/write/undo.ts';
import type { NewRow } from '../../src/write/write-rows.ts';
import { type Changes, inContentFolder, NOON } from '../check/content-folder.ts';
import { soundFiles } from '../check/sound-files.ts';
import { typed } from './file-styles.ts';
import {
  added,
  addRows,
  bytesBelow,
  costRow,
  hoursRow,
  mistakesIn,
  partRow,
  pressOf,
} from './press-ledger.ts';

// What a spreadsheet would run as a formula is refused.
const words = typed.filter((text) => /^[^=+\-@]/.test(text));

/** A row that the press can have. */
const row: fc.Arbitrary<NewRow> = fc.oneof(
  words.map((what) => hoursRow(what)),
  words.map((what) =>
    hoursRow(what, { who: 'helper-one', date: '2024-12-30', recorded: '2025-05-02' }),
  ),
  fc.tuple(words, words).map(([what, note]) => costRow(what, { parts: 'gib nut', note })),
  words.map((name) => partRow(name, { note: name })),
);

/** The press as other programs leave its files. */
const files: Record<string, Changes> = {
  'as it is': {},
  'with CRLF, a mark and semicolons, all in quotes': {
    'press/ledger/hours.csv': quoted('hours.csv', ';', '\ufeff'),
    'press/ledger/costs.csv': quoted('costs.csv', '\t', ''),
  },
  'with YAML in place of tables, with comments and without a last line end': {
    'press/ledger/hours.csv': undefined,
    'press/ledger/hours.yaml': `# Hours, newest last\n-   id: h-001 # the first\n    date: 2025-03-02\n    hours: "2:30"\n    phase: teardown\n    work: clean\n    what: 'Cleaned the frame'\n\n# by hand\n-   {id: h-002, date: 2025-03-08, hours: "5:00", phase: teardown, work: fit, who: helper-one, what: Screw out} # heavy`,
    'press/ledger/parts.yaml': `[ {id: gib, name: Gib, system: ram, source: spare-press, got: 2025-03-10, fitted: 2025-04-12}, # tight\r\n  {id: nut, name: Bronze nut, system: screw, source: press} # worn\r\n]\r\n# end`,
  },
  'with a file a year': {
    'press/ledger/hours.csv': undefined,
    'press/ledger/hours-2024.csv':
      'id,date,hours,phase,work,what\nh-000,2024-11-02,1:00,teardown,clean,Looked at it',
    'press/ledger/hours-2025.csv': soundFiles['press/ledger/hours.csv'],
  },
};

function quoted(name: string, separator: string, mark: string): string {
  const lines = String(soundFiles[`press/ledger/${name}`]).trimEnd().split('\n');
  const cells = lines.map((line) =>
    line
      .split(',')
      .map((cell) => `"${cell}"`)
      .join(separator),
  );
  return `${mark + cells.join('\r\n')}\r\n`;
}

describe('any additions to a press', () => {
  for (const [how, changes] of Object.entries(files))
    it(`${how} read back whole, keep other bytes and are taken back byte for byte`, async () => {
      await fc.assert(
        fc.asyncProperty(
          fc.array(fc.array(row, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 3 }),
          (steps) =>
            inContentFolder(changes, async (content) => {
              const states = [await bytesBelow(content)];
              for (const rows of steps) {
                const written = await added(addRows(content, ...rows));
                expect(written.map(({ kind }) => kind)).toEqual(rows.map(({ kind }) => kind));
                await standsAs(content, rows, written);
                const touched = new Set(written.map(({ file }) => file));
                const now = await bytesBelow(content);
                for (const [file, bytes] of Object.entries(states.at(-1) ?? {}))
                  if (!touched.has(file)) expect(now[file]).toBe(bytes);
                states.push(now);
              }
              expect(await mistakesIn(content)).toEqual([]);
              for (const before of states.reverse().slice(1)) {
                expect(await undoLast(content, { now: NOON })).toHaveProperty('undone');
                expect(await bytesBelow(content)).toEqual(before);
              }
            }),
        ),
        { numRuns: 6 },
      );
    });
});

async function standsAs(
  content: string,
  rows: readonly NewRow[],
  written: Awaited<ReturnType<typeof added>>,
): Promise<void> {
  const press = await pressOf(content);
  for (const [index, { kind, fields }] of rows.entries()) {
    const { id, file, line, text } = written[index] ?? { id: '', file: '', line: 0, text: '' };
    const found = press.lists[kind].filter(({ value }) => value.id === id);
    expect(found).toHaveLength(1);
    const held = Object.entries(found[0]?.raw.value ?? {}).map(([name, value]) => [
      name,
      Array.isArray(value) ? value.join(' ') : value,
    ]);
    expect(Object.fromEntries(held)).toEqual({ id, ...fields });
    const lines = (await readFile(join(content, file), 'utf8')).split('\n');
    expect(lines[line - 1]).toContain(text.split(/\r?\n/)[0]);
  }
}
