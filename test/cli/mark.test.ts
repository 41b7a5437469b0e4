import { copyFile, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Dirs, inWorkshop, runCommand } from './run-command.ts';

const mark = (dirs: Dirs, ...args: string[]) => runCommand(['mark', ...args], dirs);
const press = ({ content }: Dirs, name: string) => join(content, 'press', name);
const read = (dirs: Dirs, name: string) => readFile(press(dirs, name), 'utf8');

async function addRow(dirs: Dirs): Promise<void> {
  const file = press(dirs, 'ledger/searches.csv');
  await writeFile(file, `${await readFile(file, 'utf8')}s-002,2025-05-06,gib,none,\n`);
}

describe('mark', () => {
  it('marks what was recorded by its day, says what to do next, and then finds nothing new', () =>
    inWorkshop({}, async (dirs) => {
      const { status, out } = await mark(dirs, '--date', '2025-05-01');
      expect(status).toBe(0);
      expect(out).toMatch(
        /^press: marked 9 rows, as of 1 May 2025\.\n {2}size 9\n {2}root \S{44}\n {2}not signed\n\nCommit marks\.txt/,
      );
      expect(await read(dirs, 'marks.txt')).toMatch(
        /^shed\.example\/press\n9\n\S{44}\ndate 2025-05-01\n$/,
      );
      const again = await mark(dirs);
      expect([again.status, again.out]).toEqual([0, 'press: no row that is not marked already.\n']);
      expect((await runCommand(['check'], dirs)).status).toBe(0);
    }));

  it('leaves rows recorded after its day for the next, and keeps the lines of earlier marks', () =>
    inWorkshop({}, async (dirs) => {
      expect((await mark(dirs, '--date', '2025-03-09')).out).toContain('marked 6 rows');
      const first = await read(dirs, 'marked-rows.jsonl');
      expect(first).not.toContain('2025-04');
      expect((await mark(dirs, 'press')).out).toMatch(/marked \d rows/);
      expect((await read(dirs, 'marked-rows.jsonl')).startsWith(first)).toBe(true);
    }));

  it('makes one secret, which only the owner may read', () =>
    inWorkshop({}, async (dirs) => {
      await mark(dirs, '--date', '2025-05-01');
      const secret = await read(dirs, 'marks-secret.txt');
      expect(secret).toMatch(/\n1 [0-9a-f]{64}\n$/);
      expect((await stat(press(dirs, 'marks-secret.txt'))).mode & 0o777).toBe(0o600);
      await addRow(dirs);
      await mark(dirs);
      expect(await read(dirs, 'marks-secret.txt')).toBe(secret);
    }));

  it('that broke off after the rows and before the mark is made good by the next', () =>
    inWorkshop({}, async (dirs) => {
      await mark(dirs, '--date', '2025-05-01');
      await copyFile(press(dirs, 'marks.txt'), press(dirs, 'entries/.earlier'));
      await addRow(dirs);
      await mark(dirs, '--date', '2025-05-07');
      const whole = await read(dirs, 'marks.txt');
      const rows = await read(dirs, 'marked-rows.jsonl');

      await copyFile(press(dirs, 'entries/.earlier'), press(dirs, 'marks.txt'));
      await writeFile(press(dirs, 'marked-rows.jsonl'), rows.slice(0, -20));
      await writeFile(press(dirs, '.marks.txt.new'), 'half a fi');
      expect((await runCommand(['check'], dirs)).status).toBe(0);
      await mark(dirs, '--date', '2025-05-07');
      expect(await read(dirs, 'marks.txt')).toBe(whole);
      expect(await read(dirs, 'marked-rows.jsonl')).toBe(rows);
    }));

  it('is refused while the check finds a mistake, and for a day that is none, to come, or before the last mark', () =>
    inWorkshop({ 'press/ledger/costs.csv': ['12.50', 'twelve'] }, async (dirs) => {
      const refused = await mark(dirs);
      expect([refused.status, refused.err]).toEqual([
        1,
        '1 problem in 1 file. Nothing was marked.\n',
      ]);
      expect(await read(dirs, 'marks.txt').catch(() => 'none')).toBe('none');
      const file = press(dirs, 'ledger/costs.csv');
      await writeFile(file, (await readFile(file, 'utf8')).replace('twelve', '12.50'));
      expect((await mark(dirs, '--date', 'May')).status).toBe(2);
      expect((await mark(dirs, '--date', '2999-01-01')).err).toContain('is in the future');
      await mark(dirs, '--date', '2025-05-01');
      expect((await mark(dirs, '--date', '2025-04-30')).err).toContain(
        'is before the mark of 2025-05-01',
      );
      expect((await mark(dirs, 'prss')).err).toContain('Did you mean "press"?');
    }));

  it('makes no secret by itself where earlier marks had one, and one for rows to come where that is asked for', () =>
    inWorkshop({}, async (dirs) => {
      await mark(dirs, '--date', '2025-05-01');
      await rm(press(dirs, 'marks-secret.txt'));
      await addRow(dirs);
      const refused = await mark(dirs);
      expect([refused.status, refused.err]).toEqual([
        1,
        expect.stringContaining('press: marks-secret.txt, from which its earlier marks were made'),
      ]);
      expect((await mark(dirs, '--new-secret')).status).toBe(0);
      const marks = await read(dirs, 'marks.txt');
      await rm(press(dirs, 'marks-secret.txt'));
      const again = await mark(dirs, '--new-secret');
      expect([again.status, again.out]).toEqual([
        0,
        expect.stringContaining('press: a new secret for the rows to come'),
      ]);
      expect(await read(dirs, 'marks.txt')).toBe(marks);
      expect(await read(dirs, 'marks-secret.txt')).toMatch(/\n11 [0-9a-f]{64}\n$/);
    }));

  it('keeps its rows from being taken back, and says what to type instead', () =>
    inWorkshop({}, async (dirs) => {
      expect((await runCommand(['add', 'hours', '1:00', 'Oiled it'], dirs)).status).toBe(0);
      expect((await mark(dirs)).status).toBe(0);
      const { status, err } = await runCommand(['undo'], dirs);
      expect([status, err]).toEqual([
        1,
        expect.stringContaining(
          '  the row "h-003" is marked, and stays\n  → say that it no longer counts: npm run add -- withdrawal h-003 "why"\n',
        ),
      ]);
      expect(err).toContain('Nothing was taken back.');
      const said = await runCommand(['add', 'withdrawal', 'h-003', 'Counted twice'], dirs);
      expect([said.status, said.err]).toEqual([0, '']);
    }));

  it('gives no ledger an address that is none for good', () =>
    inWorkshop(
      { 'site.yaml': ['https://shed.example/', 'https://my-log.example/'] },
      async (dirs) => {
        const { status, err } = await mark(dirs);
        expect([status, err]).toEqual([1, expect.stringContaining('https://my-log.example/')]);
      },
    ));

  it('begins a new secret when the old one is lost and that is asked for', () =>
    inWorkshop(
      {
        'press/ledger/costs.csv':
          'id,date,amount,category,phase,what,supplier\nc-001,2025-03-01,180,vehicle,teardown,The press,Hollis\n',
      },
      async (dirs) => {
        await mark(dirs, '--date', '2025-05-01');
        await rm(press(dirs, 'marks-secret.txt'));
        await addRow(dirs);
        expect((await mark(dirs)).status).toBe(1);
        expect((await mark(dirs, '--new-secret')).status).toBe(0);
        expect(await read(dirs, 'marks-secret.txt')).toMatch(/\n9 [0-9a-f]{64}\n$/);
        const { status, out } = await runCommand(['check'], dirs);
        expect(status).toBe(0);
        expect(out).toContain("the private fields of 1 of them can't be checked");
      },
    ));
});

describe('a key', () => {
  it('is made outside the repository only, for its owner alone, and never over a file', () =>
    inWorkshop({}, async (dirs) => {
      for (const inside of [press(dirs, 'key.pem'), 'key.pem'])
        expect(await mark(dirs, '--new-key', inside)).toMatchObject({
          status: 1,
          err: expect.stringContaining('could be committed or published'),
        });
      const key = join(dirs.work, '..', 'key.pem');
      const { status, out } = await mark(dirs, '--new-key', key);
      expect(status).toBe(0);
      expect(out).toMatch(/\nmarkKey: shed\.example\/press\+[0-9a-f]{8}\+\S{44}\n$/);
      expect((await stat(key)).mode & 0o777).toBe(0o600);
      expect((await mark(dirs, '--new-key', key)).err).toContain('it was left as it is');
    }));

  it('signs once project.yaml names it, and is refused before, when another is named, and inside the content', () =>
    inWorkshop({}, async (dirs) => {
      const [key, other] = [join(dirs.work, '..', 'key.pem'), join(dirs.work, '..', 'other.pem')];
      const [, line = ''] = /^(markKey: .*)$/m.exec((await mark(dirs, '--new-key', key)).out) ?? [];
      await mark(dirs, '--new-key', other);
      const unnamed = await mark(dirs, '--key', key);
      expect([unnamed.status, unnamed.err]).toEqual([
        1,
        `press: project.yaml names no key yet. Add this line: ${line}\n`,
      ]);
      const project = press(dirs, 'project.yaml');
      await writeFile(project, `${await readFile(project, 'utf8')}${line}\n`);
      expect((await mark(dirs, '--key', other)).err).toContain('not the one that markKey');
      await copyFile(key, press(dirs, 'ledger/.key.pem'));
      expect((await mark(dirs, '--key', press(dirs, 'ledger/.key.pem'))).status).toBe(1);
      expect(await mark(dirs, '--key', key)).toMatchObject({
        status: 0,
        out: expect.stringContaining('\n  signed\n'),
      });
      expect((await runCommand(['check'], dirs)).status).toBe(0);
    }));
});
