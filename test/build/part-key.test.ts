import { appendFile, cp, mkdir, rename, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { partKey, stateOf } from '../../src/build/part-key.ts';
import type { PhotoManifest } from '../../src/photo/manifest.ts';
import { inContentFolder } from '../check/content-folder.ts';

const PHOTO = { sizes: [], colour: '#101010', taken: undefined, sha256: 'a'.repeat(64) };

/** The name of the press's pages before and after something was done to the content folder. */
function keys(change: (content: string) => Promise<unknown>): Promise<{ same: boolean }> {
  return inContentFolder({}, async (content) => {
    const before = await keyOf(content);
    await change(content);
    return { same: (await keyOf(content)) === before };
  });
}

async function keyOf(content: string, photos: PhotoManifest = {}): Promise<string> {
  const { projects } = await stateOf(content);
  return partKey('press', projects.get('press') ?? { hash: 'none', bytes: 0 }, photos);
}

test('a byte of a ledger, of the site or of an entry gives pages another name', async () => {
  for (const file of [
    'press/ledger/hours.csv',
    'site.yaml',
    'press/entries/2025-04-13-the-ram-slides.mdx',
  ])
    expect(await keys((content) => appendFile(join(content, file), '\n'))).toEqual({ same: false });
});

test('a file that is renamed, moved or new gives pages another name', async () => {
  const at = (content: string, name: string) => join(content, 'press/ledger', name);
  expect(
    await keys((content) => rename(at(content, 'hours.csv'), at(content, 'hours-2025.csv'))),
  ).toEqual({ same: false });
  expect(await keys((content) => writeFile(at(content, 'costs-none.csv'), ''))).toEqual({
    same: false,
  });
  const photos = (content: string) => join(content, 'press/photos');
  expect(
    await keys(async (content) => {
      await mkdir(photos(content), { recursive: true });
      await writeFile(join(photos(content), 'one.jpg'), '');
    }),
  ).toEqual({ same: false });
});

test('times of files, other projects and hidden files give no other name', async () => {
  expect(await keys((content) => utimes(join(content, 'press/project.yaml'), 1, 1))).toEqual({
    same: true,
  });
  expect(
    await keys((content) => cp(join(content, 'press'), join(content, 'mill'), { recursive: true })),
  ).toEqual({ same: true });
  expect(await keys((content) => writeFile(join(content, 'press/.hours.csv.swp'), 'x'))).toEqual({
    same: true,
  });
});

test('where the folder lies gives no other name', () =>
  inContentFolder({}, (one) =>
    inContentFolder({}, async (other) => {
      expect(one).not.toBe(other);
      expect(await keyOf(one)).toBe(await keyOf(other));
      expect(await stateOf(one)).toEqual(await stateOf(other));
    }),
  ));

test('a photo of the project gives another name, in whatever order they are listed; one of another project does not', () =>
  inContentFolder({}, async (content) => {
    const [a, b] = [PHOTO, { ...PHOTO, sha256: 'b'.repeat(64) }];
    const none = await keyOf(content);
    const both = await keyOf(content, { 'press/a.jpg': a, 'press/b.jpg': b });
    expect(both).not.toBe(none);
    expect(await keyOf(content, { 'press/b.jpg': b, 'press/a.jpg': a })).toBe(both);
    expect(await keyOf(content, { 'mill/a.jpg': a })).toBe(none);
  }));
