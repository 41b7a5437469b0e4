import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { changeReading } from '../../src/bench/change-row.ts';
import { rowCounts, type Size, sizeNamed } from '../../src/bench/content/size.ts';
import { writeContent } from '../../src/bench/content/write.ts';
import { openBook } from '../../src/book/open.ts';
import { rowKinds } from '../../src/model/kinds.ts';
import { readContent } from '../../src/read/content.ts';

const SMALL: Size = { ...(sizeNamed('M/25') as Size), projects: 2, photos: 1 };

let home = '';
beforeAll(async () => {
  home = await mkdtemp(join(tmpdir(), 'witnessmark-bench-content-'));
  await writeContent(join(home, 'one'), SMALL, 3);
});
afterAll(() => rm(home, { recursive: true, force: true }));

it('writes content that the check finds nothing in', async () => {
  const { problems, projects } = await openBook(join(home, 'one'), { now: new Date() });
  expect(problems).toEqual([]);
  expect(projects.map(({ entries }) => entries.length)).toEqual([SMALL.entries, SMALL.entries]);
});

it('writes as many rows and specs as the size says', async () => {
  const { projects } = await readContent(join(home, 'one'));
  for (const { lists } of projects) {
    const rates = lists.rates.length;
    const rows = rowKinds.reduce((count, kind) => count + lists[kind].length, 0);
    expect(rows - rates).toBe(SMALL.rows);
    expect(lists.readings.length).toBe(rowCounts(SMALL).readings);
    const derived = lists.specs.filter(({ value }) => value.inputs !== undefined);
    expect([lists.specs.length, derived.length]).toEqual([24 * SMALL.systems, 16 * SMALL.systems]);
  }
});

it('gives every spec that is worked out values of several days', async () => {
  const { projects } = await openBook(join(home, 'one'), { now: new Date() });
  for (const { recipes, values } of projects)
    for (const id of recipes.keys()) expect(values.get(id)?.length, id).toBeGreaterThan(1);
});

it('writes the same bytes for the same seed, and others for another', async () => {
  await writeContent(join(home, 'again'), SMALL, 3);
  await writeContent(join(home, 'other'), SMALL, 4);
  const one = await textsOf(join(home, 'one'));
  expect(await textsOf(join(home, 'again'))).toEqual(one);
  expect(await textsOf(join(home, 'other'))).not.toEqual(one);
});

it('changes one value of one reading', async () => {
  const valuesIn = async () => {
    const { projects } = await readContent(join(home, 'one'));
    return projects.flatMap(({ lists }) =>
      lists.readings.map(({ value }) => value.values.map((read) => read.value).join(' ')),
    );
  };
  const before = await valuesIn();
  await changeReading(join(home, 'one'));
  const after = await valuesIn();
  expect(after.filter((values, index) => values !== before[index])).toHaveLength(1);
  expect((await openBook(join(home, 'one'), { now: new Date() })).problems).toEqual([]);
});

async function textsOf(folder: string): Promise<string[]> {
  const files = (await readdir(folder, { recursive: true })).sort();
  return Promise.all(
    files
      .filter((file) => /\.[a-z]+$/.test(file))
      .map(async (file) => `${file} ${await readFile(join(folder, file), 'latin1')}`),
  );
}

it('knows sizes by name, and parts of them', () => {
  expect(sizeNamed('M')).toMatchObject({ projects: 5, entries: 200, rows: 10_000, systems: 25 });
  expect(sizeNamed('L/10')).toMatchObject({ projects: 20, entries: 15, rows: 1500, systems: 4 });
  for (const name of ['', 'S', 'm', 'M/0', 'M/x']) expect(sizeNamed(name)).toBeUndefined();
});
