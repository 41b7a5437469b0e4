import { generateKeyPairSync } from 'node:crypto';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { printMarks } from '../../src/trust/mark.ts';
import { printKey } from '../../src/trust/note-key.ts';
import { parseMarks } from '../../src/trust/parse-marks.ts';
import { signMark } from '../../src/trust/sign-mark.ts';
import { inContentFolder } from './content-folder.ts';
import { checkAfterMark, edit, markPress, problemsIn } from './marked-content.ts';

describe('the files of marks', () => {
  it('are refused when a published row was changed in them', async () => {
    expect(
      await checkAfterMark({}, ['marked-rows.jsonl', ['"12.50"', '"13.50"']]),
    ).toMatchInlineSnapshot(`
      "press/marked-rows.jsonl:1:1
        the rows from 1 to 9 are not those marked on 2025-05-01: one of these lines, or the mark in marks.txt, was changed
        → restore both files from a backup, or from the published site: press/marks/rows.jsonl and press/marks/marks.txt are the same files"
    `);
  });

  it('are refused when rows are missing, and when the mark was changed', async () => {
    const cut = await checkAfterMark({}, ['marks.txt', ['\n9\n', '\n10\n']]);
    expect(cut).toContain(
      'press/marked-rows.jsonl:10:1\n  only 9 of the 10 rows marked on 2025-05-01',
    );
    expect(await checkAfterMark({}, ['marks.txt', ['date 2025', 'day 2025']])).toContain(
      'press/marks.txt:4:1\n  "day 2025-05-01" is no date of a mark',
    );
  });

  it('may end in rows that no mark counts, which a mark that broke off left behind', async () => {
    await inContentFolder({}, async (folder) => {
      await markPress(folder, '2025-05-01');
      const file = join(folder, 'press/marked-rows.jsonl');
      const whole = await readFile(file, 'utf8');
      await writeFile(file, `${whole}{"id":"c-9"}\n{"half":`);
      expect(await problemsIn(folder)).toEqual([]);
      expect(await markPress(folder, '2025-05-02')).toBe(0);
      await edit(folder, [
        'ledger/searches.csv',
        ['14.00\n', '14.00\ns-002,2025-03-06,gib,none,\n'],
      ]);
      expect(await markPress(folder, '2025-05-02')).toBe(1);
      expect((await readFile(file, 'utf8')).startsWith(`${whole}{"id":"s-002"`)).toBe(true);
    });
  });
});

describe('the key of a project', () => {
  const { privateKey, publicKey } = generateKeyPairSync('ed25519');
  const line = printKey({ name: 'shed.example/press', publicKey });
  const named = {
    'press/project.yaml': ['currency: GBP', `currency: GBP\nmarkKey: ${line}`],
  } as const;

  /** Marks the press, signs by a key, and gives the codes of the problems after an edit of marks.txt. */
  const codes = (key: typeof privateKey | undefined, change: (text: string) => string) =>
    inContentFolder(named, async (folder) => {
      await markPress(folder, '2025-05-01');
      const file = join(folder, 'press/marks.txt');
      const { marks } = parseMarks(await readFile(file, 'utf8'));
      const signed = key ? marks.map((mark) => signMark(mark, key)) : marks;
      await writeFile(file, change(printMarks(signed)));
      return (await problemsIn(folder)).map(({ code, level }) => `${level} ${code}`);
    });

  it('accepts what it signed, and marks before its first signature', async () => {
    expect(await codes(privateKey, (text) => text)).toEqual([]);
    expect(await codes(undefined, (text) => text)).toEqual([]);
  });

  it('refuses another date under its signature', async () => {
    expect(await codes(privateKey, (text) => text.replace('2025-05-01', '2025-05-02'))).toEqual([
      'error marks/signature',
    ]);
  });

  it('is missed when marks are signed and project.yaml no longer names it', async () => {
    await inContentFolder(named, async (folder) => {
      await markPress(folder, '2025-05-01');
      const file = join(folder, 'press/marks.txt');
      const { marks } = parseMarks(await readFile(file, 'utf8'));
      await writeFile(file, printMarks(marks.map((mark) => signMark(mark, privateKey))));
      await edit(folder, [
        'ledger/searches.csv',
        ['14.00\n', '14.00\ns-002,2025-03-06,gib,none,\n'],
      ]);
      await markPress(folder, '2025-05-03');
      expect((await problemsIn(folder)).map(({ code, level }) => `${level} ${code}`)).toEqual([
        'warning marks/unsigned',
      ]);
      await edit(folder, ['project.yaml', [`markKey: ${line}\n`, '']]);
      expect((await problemsIn(folder)).map(({ code }) => code)).toEqual(['marks/key-missing']);
    });
  });

  it('has to be a key, of this ledger', async () => {
    const withKey = (text: string) =>
      checkAfterMark({
        'press/project.yaml': ['currency: GBP', `currency: GBP\nmarkKey: ${text}`],
      });
    expect(await withKey('none')).toContain('markKey: "none" is no public key');
    expect(await withKey(printKey({ name: 'shed.example/lathe', publicKey }))).toContain(
      'the key goes by "shed.example/lathe", and the marks by "shed.example/press"',
    );
  });
});
