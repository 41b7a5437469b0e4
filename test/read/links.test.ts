import { mkdir, rename, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readContent } from '../../src/read/content.ts';
import { inContentFolder } from '../check/content-folder.ts';

/** Moves a file or folder out of the content folder and puts a link to it in its place. */
async function readLinked(path: string) {
  return inContentFolder({}, async (home) => {
    const content = join(home, 'content');
    await mkdir(content);
    for (const item of ['site.yaml', 'press']) await rename(join(home, item), join(content, item));
    await rename(join(content, path), join(home, 'outside'));
    await symlink(join(home, 'outside'), join(content, path));
    return readContent(content);
  });
}

describe('a link in the content folder is said and not followed:', () => {
  test.each([
    'press',
    'press/project.yaml',
    'press/ledger',
    'press/ledger/hours.csv',
    'press/entries',
    'press/entries/2025-04-13-the-ram-slides.mdx',
    'press/photos',
    'site.yaml',
  ])('%s', async (path) => {
    const content = await readLinked(path);
    expect(content.problems).toContainEqual(
      expect.objectContaining({ file: path, code: 'file/link', level: 'error' }),
    );
    const [press] = content.projects;
    const read = {
      press: press !== undefined,
      'press/project.yaml': press?.info !== undefined,
      'press/ledger': (press?.lists.hours.length ?? 0) > 0,
      'press/ledger/hours.csv': (press?.lists.hours.length ?? 0) > 0,
      'press/entries': (press?.entries.length ?? 0) > 0,
      'press/entries/2025-04-13-the-ram-slides.mdx': (press?.entries.length ?? 0) > 0,
      'press/photos': (press?.photos.length ?? 0) > 0,
      'site.yaml': content.site !== undefined,
    };
    expect(Object.entries(read).filter(([, was]) => !was)).toContainEqual([path, false]);
  });
});

test('what is no file is no entry', async () => {
  await inContentFolder({}, async (content) => {
    await mkdir(join(content, 'press/entries/2025-04-20-folder.mdx'));
    await writeFile(join(content, 'press/entries/.draft.mdx'), 'x');
    const { problems } = await readContent(content);
    expect(problems.map(({ file, code }) => `${file} ${code}`)).toEqual([
      'press/entries/2025-04-20-folder.mdx file/unknown-folder',
    ]);
  });
});
