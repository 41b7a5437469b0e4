import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { changesOf } from '../../src/write/journal.ts';
import { undoLast } from '../../src/write/undo.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';
import { soundFiles } from '../check/sound-files.ts';
import { added, addRows, hoursRow, mistakesIn, pressOf } from './press-ledger.ts';
import { startAdder } from './start-adder.ts';

const KILLS = 50;
const FILES = ['press/ledger/hours.csv', 'press/ledger/costs.csv'];

it('leaves whole files and no row twice, wherever in an addition the process is killed', () =>
  inContentFolder({}, async (content) => {
    const confirmed: string[] = [];
    let cut = 0;
    for (let kill = 1; kill <= KILLS; kill++) {
      const one = await startAdder(content, `kill ${kill}`, 99, kill).ended;
      expect(one.signal, one.err).toBe('SIGKILL');
      confirmed.push(...one.confirmed);
      for (const file of FILES) {
        const text = await readFile(join(content, file), 'utf8');
        expect(text.startsWith(String(soundFiles[file]))).toBe(true);
        expect(text.endsWith('\n')).toBe(true);
      }
      const left = await readdir(join(content, '.witnessmark'));
      if (left.includes('lock')) cut++;
      await onceEach(content, confirmed);
    }
    expect(cut).toBeGreaterThan(KILLS / 2);

    const begun = performance.now();
    await added(addRows(content, hoursRow('After all')));
    expect(performance.now() - begun).toBeLessThan(5000);
    await onceEach(content, confirmed);
    expect(await mistakesIn(content)).toEqual([]);
    expect((await readdir(join(content, '.witnessmark'))).sort()).toEqual([
      '.gitignore',
      'additions.jsonl',
    ]);
    expect(
      (await readdir(join(content, 'press/ledger'))).filter((name) => name.startsWith('.')),
    ).toEqual([]);

    const press = await pressOf(content);
    const rows = press.lists.hours.length + press.lists.costs.length;
    const changes = await changesOf(content);
    expect(changes.flatMap(({ written }) => written)).toHaveLength(rows - 4);
    for (const _ of changes)
      expect(await undoLast(content, { now: NOON })).toHaveProperty('undone');
    for (const file of FILES)
      expect(await readFile(join(content, file), 'utf8')).toBe(soundFiles[file]);
  }));

/** Rows that were said to be written stand there, and none stands twice. */
async function onceEach(content: string, confirmed: readonly string[]): Promise<void> {
  const { lists } = await pressOf(content);
  const rows = [...lists.hours, ...lists.costs].map(({ value: { id, what } }) => `${id} ${what}`);
  expect(new Set(rows).size).toBe(rows.length);
  const ids = rows.map((row) => row.split(' ')[0]);
  expect(new Set(ids).size).toBe(ids.length);
  expect(rows).toEqual(expect.arrayContaining([...confirmed]));
}
