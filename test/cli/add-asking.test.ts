import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { soundFiles } from '../check/sound-files.ts';
import { type Dirs, inWorkshop } from './run-command.ts';

/** The program of util-linux that gives a command a terminal. */
const TERMINAL = '/usr/bin/script';

/** Runs the add command in a terminal and types an answer at each question; gives all that was shown. */
function answering({ content }: Dirs, words: string, answers: readonly string[]) {
  const child = spawn(
    TERMINAL,
    ['-qec', `${process.execPath} src/cli/run.mjs add ${words}`, '/dev/null'],
    {
      env: { ...process.env, WITNESSMARK_CONTENT: content, NO_COLOR: '1', TERM: 'dumb' },
    },
  );
  const left = [...answers];
  let shown = '';
  let answered = 0;
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    shown += text;
    if (!/(?:: |\[Y\/n\] )$/.test(shown.slice(answered))) return;
    answered = shown.length;
    child.stdin.write(`${left.shift() ?? '\u0003'}\r`);
  });
  return new Promise<{ status: number | null; shown: string; left: string[] }>(
    (resolve, reject) => {
      child.on('error', reject);
      child.on('close', (status) => resolve({ status, shown: shown.replaceAll('\r', ''), left }));
    },
  );
}

const hours = ({ content }: Dirs) => readFile(join(content, 'press/ledger/hours.csv'), 'utf8');

describe.skipIf(!existsSync(TERMINAL)).concurrent('add in a terminal', () => {
  it('asks step by step, offers what was last, checks each answer and shows the row before it is written', () =>
    inWorkshop({}, async (dirs) => {
      const { status, shown, left } = await answering(dirs, 'hours', [
        '2025-05-01',
        'an hour',
        '1:00',
        'rebuilt',
        'rebuild',
        '',
        'Greased the screw',
        '',
        'y',
      ]);
      expect(left.length, shown).toBeLessThan(2);
      expect(shown).toContain('work (clean fit) [fit]: ');
      expect(shown).toMatch(/"an hour" .*\n/);
      expect(shown).toContain('"rebuilt" is not known. Did you mean "rebuild"?');
      expect(shown.indexOf('1:00,rebuild,fit')).toBeLessThan(shown.indexOf('Write it?'));
      expect(status).toBe(0);
      expect(await hours(dirs)).toMatch(
        /\nh-003,2025-05-01,1:00,rebuild,fit,.*,Greased the screw,?.*\n$/,
      );
    }));

  it('writes nothing after a no, or when it is broken off', () =>
    inWorkshop({}, async (dirs) => {
      const no = await answering(dirs, 'hours 1:00 Greased', ['n']);
      expect([no.status, no.shown]).toEqual([1, expect.stringContaining('Nothing was written.')]);
      const broken = await answering(dirs, 'hours', ['2025-05-01', '1:00', '\u0003']);
      expect(broken.status).not.toBe(0);
      expect(await hours(dirs)).toBe(soundFiles['press/ledger/hours.csv']);
    }));
});
