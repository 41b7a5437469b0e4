import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { changesOf } from '../../src/write/journal.ts';
import { undoLast } from '../../src/write/undo.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';
import { soundFiles } from '../check/sound-files.ts';
import { added, addRows, hoursRow, mistakesIn, pressOf } from './press-ledger.ts';
import { startAdder } from './start-adder.ts';

const KILLS = 50;
const minute = (what: string) => hoursRow(what, { hours: '0:01' });
const FILES = ['press/ledger/hours.csv', 'press/ledger/costs.csv'];

it('leaves whole files and no row twice, wherever in an addition the process is killed', async () => {
  const compiled = await mkdtemp(join(tmpdir(), 'witnessmark-compiled-'));
  try {
    // Two presses side by side, for two processors.
    const steps = Array.from({ length: KILLS }, (_, index) => index + 1);
    const halves = [0, 1].map((half) => steps.filter((step) => step % 2 === half));
    const counts = await Promise.all(halves.map((half) => killedAt(half, compiled)));
    process.stderr.write(`killed additions: ${JSON.stringify(counts)}\n`);
  } finally {
    await rm(compiled, { recursive: true, force: true });
  }
});

/** How many kills left a lock, files begun beside their place, a change to be finished; and how many rows were confirmed. */
type Counts = Record<'kills' | 'locked' | 'begun' | 'pending' | 'confirmed', number>;

function killedAt(steps: readonly number[], compiled: string): Promise<Counts> {
  return inContentFolder({}, async (content) => {
    const confirmed: string[] = [];
    const counts = { kills: steps.length, locked: 0, begun: 0, pending: 0 };
    for (const [index, killAt] of steps.entries()) {
      const one = await startAdder(content, `step ${killAt}`, 99, { killAt, compiled }).ended;
      expect(one.signal, one.err).toBe('SIGKILL');
      confirmed.push(...one.confirmed);
      await areWhole(content);
      await onceEach(content, confirmed);
      const left = await leftIn(content);
      if (left.includes('lock')) counts.locked++;
      if (left.includes('begun.json')) counts.begun++;
      if (left.includes('pending.json')) counts.pending++;
      // Some kills are not followed by anything but the next.
      if (index % 3 === 2) continue;
      const begun = performance.now();
      const [next] = await added(addRows(content, minute(`After step ${killAt}`)));
      expect(performance.now() - begun).toBeLessThan(5000);
      confirmed.push(`${next?.id} After step ${killAt}`);
      expect(await leftIn(content)).toEqual(['.gitignore', 'additions.jsonl']);
    }
    expect(counts.locked).toBeGreaterThan(steps.length / 2);
    expect(counts.begun).toBeGreaterThan(counts.pending);
    expect(counts.pending).toBeGreaterThan(0);
    await added(addRows(content, minute('After all')));
    await onceEach(content, confirmed);
    expect(await mistakesIn(content)).toEqual([]);
    const beside = await readdir(join(content, 'press/ledger'));
    expect(beside.filter((name) => name.startsWith('.'))).toEqual([]);
    await goesBack(content);
    return { ...counts, confirmed: confirmed.length };
  });
}

/** What writing keeps, or has left, in its folder. */
async function leftIn(content: string): Promise<string[]> {
  return (await readdir(join(content, '.witnessmark')).catch(() => [])).sort();
}

async function areWhole(content: string): Promise<void> {
  for (const file of FILES) {
    const text = await readFile(join(content, file), 'utf8');
    expect(text.startsWith(String(soundFiles[file]))).toBe(true);
    expect(text.endsWith('\n')).toBe(true);
  }
}

/** Rows that were said to be written stand there, and none stands twice. */
async function onceEach(content: string, confirmed: readonly string[]): Promise<void> {
  const { lists } = await pressOf(content);
  const rows = [...lists.hours, ...lists.costs].map(({ value: { id, what } }) => `${id} ${what}`);
  const texts = lists.hours.map(({ value }) => value.what);
  expect(new Set(texts).size).toBe(texts.length);
  const ids = rows.map((row) => row.split(' ')[0]);
  expect(new Set(ids).size).toBe(ids.length);
  expect(rows).toEqual(expect.arrayContaining([...confirmed]));
}

/** The journal knows every addition, so that all can be taken back. */
async function goesBack(content: string): Promise<void> {
  const { lists } = await pressOf(content);
  const changes = await changesOf(content);
  const rows = lists.hours.length + lists.costs.length;
  expect(changes.flatMap(({ written }) => written)).toHaveLength(rows - 4);
  for (const _ of changes) expect(await undoLast(content, { now: NOON })).toHaveProperty('undone');
  for (const file of FILES)
    expect(await readFile(join(content, file), 'utf8')).toBe(soundFiles[file]);
}
