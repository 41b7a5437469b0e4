import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { clearLeftFiles } from '../../src/build/left-files.ts';

test('clearLeftFiles(folder) removes what a killed run was writing, and nothing else', async () => {
  const home = await mkdtemp(join(tmpdir(), 'witnessmark-left-'));
  try {
    await mkdir(join(home, 'cards'));
    const names = ['photos.json', 'photos.json.123-4.new', 'cards/a.png', 'cards/a.png.9-0.new'];
    for (const name of [...names, 'what.is.new']) await writeFile(join(home, name), 'x');
    await clearLeftFiles(home);
    const left = (await readdir(home, { recursive: true })).sort();
    expect(left).toEqual(['cards', 'cards/a.png', 'photos.json', 'what.is.new']);
    await clearLeftFiles(join(home, 'no-such-folder'));
  } finally {
    await rm(home, { recursive: true, force: true });
  }
});
