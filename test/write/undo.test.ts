import { appendFile, chmod, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { undoLast } from '../../src/write/undo.ts';
import { writeRows } from '../../src/write/write-rows.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';
import { added, addRows, bytesBelow, costRow, hoursRow, partRow, refused } from './press-ledger.ts';

const undo = (content: string, project?: string) => undoLast(content, { now: NOON, project });
const hoursFile = (content: string) => join(content, 'press/ledger/hours.csv');

describe('undo', () => {
  it('takes rows of several files and new columns back byte for byte, the last addition first', () =>
    inContentFolder({}, async (content) => {
      const first = await bytesBelow(content);
      await added(addRows(content, hoursRow('Screw in', { withhold: 'who' }), partRow('Ram')));
      const second = await bytesBelow(content);
      await added(addRows(content, costRow('Wire', { supplier: 'Hollis' }), hoursRow('Again')));
      expect(await undo(content)).toMatchObject({
        undone: { written: [{ id: 'c-003' }, { id: 'h-004' }] },
      });
      expect(await bytesBelow(content)).toEqual(second);
      expect(await undo(content)).toHaveProperty('undone');
      expect(await bytesBelow(content)).toEqual(first);
      expect(await refused(undo(content))).toEqual(['.:1:1 there is no addition to take back']);
      expect(await bytesBelow(content)).toEqual(first);
    }));

  it('removes a file that the addition made', () =>
    inContentFolder({ 'press/ledger/searches.csv': undefined }, async (content) => {
      const before = await bytesBelow(content);
      const fields = { date: '2025-05-01', part: 'gib', result: 'none' };
      const [row] = await added(addRows(content, { kind: 'searches', fields }));
      expect(await readFile(join(content, 'press/ledger/searches.csv'), 'utf8')).toBe(
        `id,date,part,result\n${row?.id},2025-05-01,gib,none\n`,
      );
      await undo(content);
      expect(await bytesBelow(content)).toEqual(before);
    }));

  it('refuses where the file was changed since, even elsewhere in it, and changes nothing', () =>
    inContentFolder({}, async (content) => {
      await added(addRows(content, hoursRow('Screw in'), costRow('Wire')));
      const whole = await readFile(hoursFile(content));
      await writeFile(hoursFile(content), whole.toString().replace('Cleaned', 'Washed'));
      const changed = await bytesBelow(content);
      const told = ['press/ledger/hours.csv:4:1 the file has been changed since h-003 was added'];
      expect(await refused(undo(content))).toEqual(told);
      expect(await refused(undo(content))).toEqual(told);
      expect(await bytesBelow(content)).toEqual(changed);

      await writeFile(hoursFile(content), whole);
      expect(await undo(content)).toHaveProperty('undone');
      expect(await refused(undo(content))).toEqual(['.:1:1 there is no addition to take back']);
    }));

  it('never takes a row for the one that it added before and took back', () =>
    inContentFolder({}, async (content) => {
      const before = await bytesBelow(content);
      const [first] = await added(addRows(content, hoursRow('Screw in')));
      await undo(content);
      // The same row again, by hand: the same bytes, but no addition of ours.
      await appendFile(hoursFile(content), `${first?.text}\n`);
      const byHand = await bytesBelow(content);
      expect(await refused(undo(content))).toEqual(['.:1:1 there is no addition to take back']);
      expect(await bytesBelow(content)).toEqual(byHand);
      await writeFile(
        hoursFile(content),
        Buffer.from(before['press/ledger/hours.csv'] ?? '', 'latin1'),
      );
      await added(addRows(content, hoursRow('Screw in')));
      expect(await undo(content)).toHaveProperty('undone');
      expect(await refused(undo(content))).toHaveLength(1);
      expect(await bytesBelow(content)).toEqual(before);
    }));

  it('asked for at once by several, takes each addition back once', () =>
    inContentFolder({}, async (content) => {
      const before = await bytesBelow(content);
      for (const what of ['one', 'two', 'three']) await added(addRows(content, hoursRow(what)));
      const all = await Promise.all(Array.from({ length: 5 }, () => undo(content)));
      const undone = all.flatMap((one) => ('undone' in one ? one.undone.written : []));
      expect(undone.map(({ id }) => id).sort()).toEqual(['h-003', 'h-004', 'h-005']);
      expect(await bytesBelow(content)).toEqual(before);
    }));

  it('refuses where an entry tells the row', () =>
    inContentFolder({}, async (content) => {
      await added(addRows(content, hoursRow('Screw in')));
      const entry = join(content, 'press/entries/2025-04-13-the-ram-slides.mdx');
      const text = await readFile(entry, 'utf8');
      await writeFile(entry, text.replace('r-002]', 'r-002, h-003]'));
      const before = await bytesBelow(content);
      expect(await refused(undo(content))).toEqual([expect.stringContaining('h-003')]);
      expect(await bytesBelow(content)).toEqual(before);
    }));

  it('of one project leaves the additions to others', () =>
    inContentFolder({}, async (content) => {
      await added(addRows(content, hoursRow('Screw in')));
      expect(await refused(undo(content, 'lathe'))).toEqual([
        'lathe:1:1 there is no addition to take back',
      ]);
      expect(await undo(content, 'press')).toHaveProperty('undone');
    }));
});

describe('an addition', () => {
  it('asked for twice under one name is written once, until it is taken back', () =>
    inContentFolder({}, async (content) => {
      const ask = () =>
        writeRows(content, 'press', [hoursRow('Screw in')], { now: NOON, key: 'a' });
      const [first, second] = [await added(ask()), await added(ask())];
      expect(second).toEqual(first);
      expect(await readFile(hoursFile(content), 'utf8')).toMatch(/^(?:.*\n){4}$/);
      await undo(content);
      expect((await added(ask()))[0]?.id).toBe('h-003');
    }));

  it('of which one row is wrong writes none, and a wrong file is named', () =>
    inContentFolder({}, async (content) => {
      const before = await bytesBelow(content);
      const wrong = costRow('Wire', { phase: 'rebuilt', amount: '12,50,1' });
      const told = await refused(addRows(content, hoursRow('Screw in'), wrong));
      expect(told.join('\n')).toMatch(/^press\/ledger\/costs\.csv:4:\d+ /);
      for (const file of ['press/ledger/../../x.csv', 'press/ledger/costs.csv', '/etc/hours.csv'])
        expect(await refused(addRows(content, { ...hoursRow('x'), file }))).toEqual([
          `${file}:1:1 rows of hours are not read from "${file}"`,
        ]);
      expect(await bytesBelow(content)).toEqual(before);
    }));

  it('leaves who may read the file as it was', () =>
    inContentFolder({}, async (content) => {
      await chmod(hoursFile(content), 0o640);
      await added(addRows(content, hoursRow('Screw in')));
      expect((await stat(hoursFile(content))).mode & 0o777).toBe(0o640);
      await undo(content);
      expect((await stat(hoursFile(content))).mode & 0o777).toBe(0o640);
    }));

  it('does not look at mistakes that were there before, and adds none', () =>
    inContentFolder(
      { 'press/phases.yaml': ['planned-finish: 2025-03-31', 'planned-finish: soon'] },
      async (content) => {
        await added(addRows(content, hoursRow('Screw in')));
        expect(await refused(addRows(content, hoursRow('Screw in', { work: 'fits' })))).toEqual([
          'press/ledger/hours.csv:5:31 unknown kind of work "fits"',
        ]);
      },
    ));
});
