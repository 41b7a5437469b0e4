import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { calendarOf, eventOf, samples } from '../import/rfc5545.ts';
import { type Dirs, filesOf, inWorkshop, runCommand } from './run-command.ts';

const MAPPING = `- id: shop
  files: hours*.ics
  kind: hours
  rules:
    - {has: dentist, skip: no work}
    - {column: CATEGORIES, has: strip, set: {phase: teardown, work: clean}}
    - {column: SUMMARY, has: screw, set: {phase: rebuild, work: fit, withhold: what}}
`;

const FILE = calendarOf(
  eventOf(
    'DTSTART:20250304T180000\nDURATION:PT2H30M\nSUMMARY:Scraped the frame\\, left side\nCATEGORIES:Strip',
    '1@a',
  ),
  eventOf(
    'DTSTART:20250305T180000Z\nDTEND:20250305T190000Z\nSUMMARY:Screw in\nCLASS:PRIVATE',
    '2@a',
  ),
  eventOf('DTSTART:20250306T180000Z\nDTEND:20250306T190000Z\nSUMMARY:Dentist', '3@a'),
  eventOf(
    'DTSTART:20250307T180000Z\nDTEND:20250307T190000Z\nSUMMARY:Screw out\nSTATUS:CANCELLED',
    '4@a',
  ),
  eventOf('DTSTART:20250308T180000Z\nDTEND:20250308T190000Z\nSUMMARY:Something', '5@a'),
  eventOf('DTSTART;VALUE=DATE:20250309\nSUMMARY:Screw day', '6@a'),
  samples['section 3.6.2, a to-do'],
  samples['section 4, a meeting in New York'],
);

async function importing(dirs: Dirs, bytes: Uint8Array, ...args: string[]) {
  const file = join(dirs.dist, '..', 'hours-03.ics');
  await writeFile(file, bytes);
  return runCommand(['import', file, ...args], dirs);
}

const withMapping = (use: (dirs: Dirs) => Promise<void>, mapping = MAPPING) =>
  inWorkshop({ 'press/imports.yaml': mapping }, use);
const hours = (dirs: Dirs) => readFile(join(dirs.content, 'press/ledger/hours.csv'), 'utf8');
const sumOf = (out: string) => /^.* read = .*$/m.exec(out)?.[0];

describe('import of a calendar', () => {
  it('shows what becomes of each event and writes nothing', () =>
    withMapping(async (dirs) => {
      const before = await filesOf(dirs.content);
      const { status, out } = await importing(dirs, FILE);
      expect(status).toBe(1);
      expect(out).toMatchInlineSnapshot(`
        "line  what     row, or why not
           4  add      2025-03-04  2:30  teardown  Scraped the frame, left side  work: clean
          12  add      2025-03-05  1:00  rebuild  Screw in  work: fit  withhold: what
          20  skipped  no work (rule 1)
                       20250306T180000Z · Dentist
          27  skipped  it was cancelled
                       20250307T180000Z · Screw out
          35  refused  no column, fixed value or rule gives "phase"; no column, fixed value or rule gives "work"
                       20250308T180000Z · Something
          42  refused  it is all day and says no hours; give it a start and an end
                       20250309 · Screw day
          48  refused  a to-do says what is to be done and not how long it took
                       VTODO · Submit Quebec Income Tax Return for 2006 · FAMILY, FINANCE
          72  refused  no column, fixed value or rule gives "phase"; no column, fixed value or rule gives "work"
                       19980312T083000 · XYZ Project Review · MEETING

        8 read = 2 to add + 0 known + 2 skipped + 4 refused
        (besides 1 description of a time zone)
        Nothing is written yet: add --write.
        "
      `);
      expect(await filesOf(dirs.content)).toEqual(before);
    }));

  it('adds hours once, and keeps what was refused for the same mapping', () =>
    withMapping(async (dirs) => {
      const first = await importing(dirs, FILE, '--write');
      expect(sumOf(first.out)).toBe('8 read = 2 added + 0 known + 2 skipped + 4 refused');
      const written = await hours(dirs);
      expect(written).toMatch(/2025-03-04,2:30,teardown,clean,.*"Scraped the frame, left side"/);
      expect(written).toMatch(/2025-03-05,1:00,rebuild,fit,.*Screw in/);
      expect((await runCommand(['check'], dirs)).out).toContain('0 problems');

      const moved = Buffer.from(FILE.toString().replace('PT2H30M', 'PT4H'));
      const second = await importing(dirs, moved, '--write');
      expect(sumOf(second.out)).toBe('8 read = 0 added + 2 known + 2 skipped + 4 refused');
      expect(await hours(dirs)).toBe(written);

      const path = join(dirs.dist, '..', 'hours-03.ics.refused.ics');
      const mended = (await readFile(path, 'utf8')).replace('Something', 'Screw checked');
      await writeFile(path, mended);
      const third = await runCommand(['import', path, '--write'], dirs);
      expect(sumOf(third.out)).toBe('4 read = 1 added + 0 known + 0 skipped + 3 refused');
    }));

  it('guesses a mapping that can be used', () =>
    inWorkshop({}, async (dirs) => {
      const { status, out } = await importing(dirs, FILE);
      expect(status).toBe(1);
      await writeFile(join(dirs.content, 'press/imports.yaml'), out);
      const read = await importing(dirs, FILE);
      expect(read.err).toBe('');
      expect(sumOf(read.out)).toMatch(/^8 read = 2 to add/);
    }));

  it('refuses a mapping of another kind, and a file that is cut off', () =>
    withMapping(async (dirs) => {
      const wrong = await importing(dirs, FILE, '--as', 'bank');
      expect(wrong.err).toContain('a calendar holds hours, and mapping "bank" makes costs');
      const cut = await importing(dirs, FILE.subarray(0, -60), '--as', 'shop');
      expect(cut.err).toContain('never ends; the file may be cut off');
    }, `${MAPPING}- id: bank\n  kind: costs\n  columns: {date: Date, amount: Amount}\n`));
});
