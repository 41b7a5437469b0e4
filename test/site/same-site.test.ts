import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { expect, it } from 'vitest';
import { differences } from './same-site.ts';

const FILES = { 'index.html': '<h1>Press</h1>', 'press/index.html': 'a', 'assets/a.css': '' };

/** What is found between the files above and a copy of them that `plant` has changed. */
async function after(plant: (copy: string) => Promise<void>): Promise<string[]> {
  const home = await mkdtemp(join(tmpdir(), 'witnessmark-same-'));
  const [first, second] = [join(home, 'first'), join(home, 'second')];
  try {
    for (const [path, text] of Object.entries(FILES)) {
      await mkdir(dirname(join(first, path)), { recursive: true });
      await writeFile(join(first, path), text);
    }
    await cp(first, second, { recursive: true });
    await plant(second);
    return await differences(first, second);
  } finally {
    await rm(home, { recursive: true });
  }
}

it('finds none between two folders of the same files', async () => {
  expect(await after(async () => {})).toEqual([]);
});

it('finds a byte that differs, a file cut short, one that is gone and one too many', async () => {
  const found = await after(async (copy) => {
    await writeFile(join(copy, 'index.html'), '<h1>press</h1>');
    await writeFile(join(copy, 'press/index.html'), '');
    await rm(join(copy, 'assets/a.css'));
    await writeFile(join(copy, 'press/.left'), '');
  });
  expect(found).toEqual([
    'assets/a.css is only in the first',
    'index.html differs from byte 4 on',
    'press/.left is only in the second',
    'press/index.html differs from byte 0 on',
  ]);
});

it('takes two empty folders for no site at all', async () => {
  const empty = await mkdtemp(join(tmpdir(), 'witnessmark-same-'));
  expect(await differences(empty, empty)).toEqual(['neither folder has a file']);
  await rm(empty, { recursive: true });
});
