import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';

const card = { over: '1931 Wendlebury', title: 'Play of the ram', lines: [], block: [] };

afterEach(() => vi.doUnmock('../../src/photo/library.ts'));

/** Name of what is made of an untouched photo, and of a card, with a version of the image library. */
async function namesWith(library: string): Promise<string[]> {
  vi.resetModules();
  vi.doMock('../../src/photo/library.ts', () => ({ LIBRARY: library }));
  const { recipeName } = await import('../../src/photo/recipe.ts');
  const { makeCard } = await import('../../src/card/make-card.ts');
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-card-'));
  await makeCard(card, folder);
  const names = [recipeName({}), ...(await readdir(folder))];
  await rm(folder, { recursive: true });
  return names;
}

test('pictures of another version of the library have other names, so that none is kept for what it would make', async () => {
  const [first, again, later] = [
    await namesWith('sharp 1'),
    await namesWith('sharp 1'),
    await namesWith('sharp 2'),
  ];
  expect(again).toEqual(first);
  expect(later).toHaveLength(2);
  for (const name of later) expect(first).not.toContain(name);
});

test('names the version that is installed', async () => {
  vi.resetModules();
  const { LIBRARY } = await import('../../src/photo/library.ts');
  expect(LIBRARY).toMatch(/^sharp \d+\.\d+\.\d+\S*, vips \d+\./);
  expect(LIBRARY).not.toContain('undefined');
});
