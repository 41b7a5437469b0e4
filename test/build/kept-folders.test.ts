import { mkdir, mkdtemp, readdir, readFile, rm, utimes, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { KeptFolders } from '../../src/build/kept-folders.ts';

const NOTES = { texts: { 'press/entries/a.mdx': '<p>A</p>' } };

/** A store in a new folder, and a way to make the pages that it takes in. */
async function inStore(
  use: (
    store: KeptFolders<typeof NOTES>,
    tools: { cache: string; pages: (text: string) => Promise<string> },
  ) => Promise<void>,
): Promise<void> {
  const home = await mkdtemp(join(tmpdir(), 'witnessmark-store-'));
  let count = 0;
  const pages = async (text: string) => {
    const folder = join(home, `pages-${count++}`);
    await mkdir(join(folder, 'press'), { recursive: true });
    await writeFile(join(folder, 'press/index.html'), text);
    return folder;
  };
  try {
    await use(new KeptFolders(join(home, 'parts')), { cache: home, pages });
  } finally {
    await rm(home, { recursive: true, force: true });
  }
}

test('pages are found under the name they were kept under, with what is noted of them', () =>
  inStore(async (store, { pages }) => {
    expect(await store.find('press', 'k1')).toBeUndefined();
    await store.keep('press', 'k1', await pages('one'), NOTES);
    const part = await store.find('press', 'k1');
    expect(part).toMatchObject(NOTES);
    expect(await readFile(join(part?.folder ?? '', 'site/press/index.html'), 'utf8')).toBe('one');
    expect(await store.find('press', 'k2')).toBeUndefined();
    expect(await store.find('mill', 'k1')).toBeUndefined();
  }));

test('pages that are kept again, as by two machines at once, are there once', () =>
  inStore(async (store, { cache, pages }) => {
    await store.keep('press', 'k1', await pages('one'), NOTES);
    await store.keep('press', 'k1', await pages('one'), NOTES);
    expect(await readdir(join(cache, 'parts/press'))).toEqual(['k1']);
  }));

test('what cannot be read is as good as none', () =>
  inStore(async (store, { pages }) => {
    const { folder } = await store.keep('press', 'k1', await pages('one'), NOTES);
    await writeFile(join(folder, 'part.json'), '{"texts": {');
    expect(await store.find('press', 'k1')).toBeUndefined();
  }));

test('prune keeps the last two states of a project, by use, and nothing of one that is gone', () =>
  inStore(async (store, { cache, pages }) => {
    for (const [index, key] of ['k1', 'k2', 'k3'].entries()) {
      const { folder } = await store.keep('press', key, await pages(key), NOTES);
      await utimes(folder, 1000 + index, 1000 + index);
    }
    await store.keep('mill', 'k1', await pages('mill'), NOTES);
    await store.find('press', 'k1');
    await store.prune(['press']);
    expect((await readdir(join(cache, 'parts/press'))).sort()).toEqual(['k1', 'k3']);
    expect(await readdir(join(cache, 'parts/mill'))).toEqual([]);
  }));

test('pages that several keep and look for at once are whole for each of them', () =>
  inStore(async (store, { cache, pages }) => {
    const made = await Promise.all(Array.from({ length: 20 }, () => pages('one')));
    const kept = made.map(async (site) => {
      const { folder, texts } = await store.keep('press', 'k1', site, NOTES);
      await store.prune(['press']);
      expect(texts).toEqual(NOTES.texts);
      return readFile(join(folder, 'site/press/index.html'), 'utf8');
    });
    expect(new Set(await Promise.all(kept))).toEqual(new Set(['one']));
    expect(await readdir(join(cache, 'parts/press'))).toEqual(['k1']);
  }));

test('prune removes what a process left that was killed long ago, and not what one is taking in', () =>
  inStore(async (store, { cache }) => {
    const [old, young] = ['k1.old.new', 'k1.young.new'].map((name) =>
      join(cache, 'parts/press', name),
    ) as [string, string];
    for (const folder of [old, young]) await mkdir(folder, { recursive: true });
    await utimes(old, 1000, 1000);
    await store.prune(['press']);
    expect(await readdir(join(cache, 'parts/press'))).toEqual(['k1.young.new']);
  }));
