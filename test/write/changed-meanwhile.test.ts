import { readFileSync } from 'node:fs';
import { mkdir, mkdtemp, readdir, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { expect, it } from 'vitest';
import { commit } from '../../src/write/commit.ts';
import { growRow } from '../../src/write/grow-row.ts';
import { hashOf, standingChanges } from '../../src/write/journal.ts';
import { steadily } from '../../src/write/steadily.ts';
import { undoLast } from '../../src/write/undo.ts';
import { inContentFolder, NOON } from '../check/content-folder.ts';
import { added, addRows, bytesBelow, hoursRow, partRow } from './press-ledger.ts';

const HOURS = 'press/ledger/hours.csv';
const PARTS = 'press/ledger/parts.yaml';

it('puts in none of the files where one is not as the change was made of', () =>
  inContentFolder({}, async (content) => {
    const before = await bytesBelow(content);
    const bytesOf = (file: string) => readFileSync(join(content, file));
    const change = {
      ...{ id: 'one', at: NOON.toISOString(), project: 'press', written: [] },
      files: [
        { file: PARTS, before: hashOf(bytesOf(PARTS)), after: hashOf(Buffer.from('a')) },
        { file: HOURS, before: hashOf(Buffer.from('else')), after: hashOf(Buffer.from('b')) },
      ].map((step) => ({ ...step, insertions: [] })),
    };
    const after = new Map([PARTS, HOURS].map((file, at) => [file, Buffer.from('ab'[at] ?? '')]));
    await added(addRows(content, hoursRow('Screw in')));
    await undoLast(content, { now: NOON });
    expect(await commit(content, change, after)).toBe('changed');
    expect(await bytesBelow(content)).toEqual(before);
    expect(await standingChanges(content)).toEqual([]);
    const kept = await readdir(join(content, '.witnessmark'));
    expect(kept.filter((name) => /begun|pending/.test(name))).toEqual([]);
  }));

it('makes a change anew of what an editor saved, and gives up where it saves again and again', async () => {
  let tries = 0;
  const settling = async () => (++tries < 3 ? ('changed' as const) : { written: tries });
  expect(await steadily('press', settling)).toEqual({ written: 3 });
  expect(await steadily('press', async () => 'changed' as const)).toMatchObject({
    problems: [
      {
        ...{ file: 'press', code: 'write/busy' },
        message: 'another program saves its files again and again; nothing was written',
      },
    ],
  });
});

it('writes neither the journal nor what it has begun through a link', () =>
  inContentFolder({}, async (content) => {
    const elsewhere = join(content, 'elsewhere');
    await writeFile(elsewhere, 'as it was');
    await mkdir(join(content, '.witnessmark'));
    await symlink(elsewhere, join(content, '.witnessmark/begun.json'));
    await added(addRows(content, hoursRow('Screw in')));
    await rm(join(content, '.witnessmark/additions.jsonl'));
    await symlink(elsewhere, join(content, '.witnessmark/additions.jsonl'));
    await expect(addRows(content, hoursRow('Screw out'))).rejects.toThrow('ELOOP');
    expect(await readFile(elsewhere, 'utf8')).toBe('as it was');
  }));

it('ends nothing outside of the content folder, whatever was left to be ended', () =>
  inContentFolder({}, async (content) => {
    const outside = await mkdtemp(join(tmpdir(), 'witnessmark-outside-'));
    try {
      const [victim, fresh] = [join(outside, 'victim.txt'), join(outside, '.victim.txt.new')];
      for (const file of [victim, fresh]) await writeFile(file, file);
      await symlink(outside, join(content, 'linked'));
      await mkdir(join(content, '.witnessmark'));
      const files = [`../${basename(outside)}/victim.txt`, 'linked/victim.txt'].map((file) => ({
        ...{ file, before: hashOf(Buffer.from(victim)), after: '', insertions: [] },
      }));
      const left = { id: 'x', at: NOON.toISOString(), project: 'press', written: [], files };
      await writeFile(join(content, '.witnessmark/pending.json'), JSON.stringify(left));
      const begun = JSON.stringify(files.map(({ file }) => file));
      await writeFile(join(content, '.witnessmark/begun.json'), begun);
      await added(addRows(content, hoursRow('Screw in')));
      for (const file of [victim, fresh]) expect(await readFile(file, 'utf8')).toBe(file);
      const [file] = files;
      const change = { ...left, id: 'y', files: file ? [file] : [] };
      await expect(commit(content, change, new Map())).rejects.toThrow('does not lie in');
    } finally {
      await rm(outside, { recursive: true, force: true });
    }
  }));

it('writes into a content folder that is reached by a link', () =>
  inContentFolder({ 'press/ledger/hours.csv': undefined }, async (content) => {
    const linked = `${content}-linked`;
    await symlink(content, linked);
    try {
      expect(await added(addRows(linked, hoursRow('Screw in')))).toMatchObject([{ id: 'h-001' }]);
    } finally {
      await rm(linked);
    }
  }));

it('makes a step of a part again that was taken back, though it has the same name', () =>
  inContentFolder({}, async (content) => {
    const [part] = await added(addRows(content, partRow('Ram')));
    const growth = { kind: 'parts' as const, fields: { id: part?.id ?? '', got: '2025-05-01' } };
    const grow = () => growRow(content, 'press', growth, { now: NOON, key: 'phone 1' });
    const before = await bytesBelow(content);
    expect(await grow()).toHaveProperty('written');
    const grown = await bytesBelow(content);
    expect(grown).not.toEqual(before);
    await undoLast(content, { now: NOON });
    expect(await bytesBelow(content)).toEqual(before);
    expect(await grow()).toHaveProperty('written');
    expect(await bytesBelow(content)).toEqual(grown);
  }));
