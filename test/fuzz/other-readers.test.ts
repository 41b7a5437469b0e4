import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isCalendar, readCalendar } from '../../src/import/calendar.ts';
import { eventOutcomes } from '../../src/import/event-outcomes.ts';
import { lineOutcomes } from '../../src/import/line-outcomes.ts';
import { countOutcomes, type Outcome } from '../../src/import/outcome.ts';
import { readTable } from '../../src/import/table.ts';
import { homeKinds, type ImportMapping } from '../../src/model/kinds.ts';
import { understand } from '../../src/read/understand.ts';
import { readYamlList } from '../../src/read/yaml.ts';
import { writeRows } from '../../src/write/write-rows.ts';
import { NOON } from '../check/content-folder.ts';
import { costRow, hoursRow } from '../write/press-ledger.ts';
import { Draw, draws } from './draw.ts';
import { everyKind } from './every-kind.ts';
import { mutate, mutateBytes } from './mutate.ts';
import { bytesOf, removeFolder, soundFolder } from './open-mutated.ts';

const CASES = Number(process.env.WITNESSMARK_FUZZ ?? 2_000) / 10;

const TABLE = `Day;Who;What;Sum;No
01.03.2025;The mill;Bar, round;-1.234,56;1
02.03.2025;Groceries;Bread;-3,20;2
03.03.2025;"A ""lathe"" shop";Chuck;-80,00;3
04.03.2025;Refund;Chuck;80,00;4
`;

const CALENDAR = `BEGIN:VCALENDAR
VERSION:2.0
BEGIN:VTIMEZONE
TZID:Europe/London
END:VTIMEZONE
BEGIN:VEVENT
UID:1@x
DTSTART;TZID=Europe/London:20250301T090000
DTEND;TZID=Europe/London:20250301T113000
SUMMARY:Scraping\\, left side
CATEGORIES:fit
END:VEVENT
BEGIN:VEVENT
UID:2@x
DTSTART:20250302T090000Z
DURATION:PT1H30M
RRULE:FREQ=DAILY;COUNT=3
SUMMARY:Folded
  line
END:VEVENT
END:VCALENDAR
`;

const [mapped] = readYamlList(everyKind['press/imports.yaml'] ?? '', 'imports.yaml').records;
const understood = mapped && understand(mapped, homeKinds.imports, 'mapping');
if (understood === undefined || Array.isArray(understood))
  throw new Error('the mapping is no good');
const mapping: ImportMapping = understood.value;
const hours: ImportMapping = {
  ...mapping,
  kind: 'hours',
  columns: {},
  fixed: { phase: 'rebuild', work: 'fit' },
};
const before = { imported: new Map(), rowIds: new Set<string>() };

/** What becomes of the lines of a file, or why it can't be told. */
function outcomesOf(bytes: Uint8Array): { outcomes: Outcome[]; read: number } | string {
  if (isCalendar(bytes)) {
    const calendar = readCalendar(bytes);
    if ('wrong' in calendar) return calendar.wrong;
    const outcomes = eventOutcomes(calendar, hours, 'Europe/London', before);
    return { outcomes, read: calendar.components.length };
  }
  const table = readTable(bytes, mapping);
  if ('missing' in table) return table.missing;
  return { outcomes: lineOutcomes(table.data, mapping, before), read: table.data.length };
}

const changed = fc.record({ changes: fc.array(draws, { maxLength: 4 }), bytes: draws });

test.each([
  ['table.csv', TABLE],
  ['calendar.ics', CALENDAR],
])(
  'of a %s of another program, whatever is wrong with it, every line has one outcome',
  (file, sound) => {
    const seen = { added: 0, skipped: 0, refused: 0, whole: 0 };
    fc.assert(
      fc.property(changed, ({ changes, bytes }) => {
        const text = changes.reduce(
          (last, numbers) =>
            mutate(last, new Draw(numbers), { file: 'table.csv', others: [TABLE, CALENDAR] }),
          sound,
        );
        const result = outcomesOf(mutateBytes(bytesOf(text), new Draw(bytes)));
        if (typeof result === 'string') {
          expect(result).not.toBe('');
          seen.whole++;
          return;
        }
        const counts = countOutcomes(result.outcomes, result.read);
        seen.added += counts.added;
        seen.skipped += counts.skipped;
        seen.refused += counts.refused;
        expect(counts.added + counts.known + counts.skipped + counts.refused, file).toBe(
          result.read,
        );
      }),
      { numRuns: CASES * 5 },
    );
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(0);
  },
  CASES * 1_000 + 60_000,
);

/** Whether all bytes of one file stand in another, in their order: something was put in and nothing taken out. */
function isWithin(part: Uint8Array, whole: Uint8Array): boolean {
  let at = 0;
  for (const byte of whole) if (byte === part[at]) at++;
  return at === part.length;
}

const HOURS = 'press/ledger/hours.csv';
const COSTS = 'press/ledger/costs-more.yaml';

test(
  'rows are added to a ledger that somebody has changed, or refused and nothing is touched',
  async () => {
    const folder = await soundFolder();
    const cases = fc.record({
      file: fc.constantFrom(HOURS, COSTS),
      changes: fc.array(draws, { maxLength: 2 }),
      bytes: draws,
    });
    const seen = { added: 0, refused: 0 };
    try {
      await fc.assert(
        fc.asyncProperty(cases, async ({ file, changes, bytes }) => {
          const text = changes.reduce(
            (last, numbers) =>
              mutate(last, new Draw(numbers), { file, others: Object.values(everyKind) }),
            everyKind[file] as string,
          );
          const path = join(folder, file);
          const typed = Buffer.from(mutateBytes(bytesOf(text), new Draw(bytes)));
          await writeFile(path, typed);
          const row = file === HOURS ? hoursRow('Scraped "it", true') : costRow('Bolts: 4');
          const result = await writeRows(folder, 'press', [row], { now: NOON });
          const after = await readFile(path);
          if ('problems' in result) {
            seen.refused++;
            expect(result.problems.length).toBeGreaterThan(0);
            expect(after.equals(typed)).toBe(true);
          } else {
            seen.added++;
            const [written] = result.written;
            const now = await readFile(join(folder, written?.file ?? ''));
            expect(now.includes(written?.id ?? 'none')).toBe(true);
            if (written?.file === file) expect(isWithin(typed, after)).toBe(true);
            for (const other of [HOURS, COSTS])
              await writeFile(join(folder, other), everyKind[other] ?? '');
          }
          await writeFile(path, everyKind[file] as string);
        }),
        { numRuns: CASES / 4 },
      );
      expect(seen.added).toBeGreaterThan(0);
      expect(seen.refused).toBeGreaterThan(0);
    } finally {
      await removeFolder(folder);
    }
  },
  CASES * 1_000 + 60_000,
);
