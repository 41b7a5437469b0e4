import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { demoData } from '../outside/demo-data.ts';
import { openBuiltDemo } from './built-book.ts';
import { attribute, select, textOf } from './pages.ts';

const site = inject('site');
const { page } = await openBuiltDemo();
const demo = await demoData(site.content);
const published = (path: string) => readFile(join(site.folder, path), 'utf8');

describe.each(demo)('the downloads of $id on the site', ({ id, files, made }) => {
  test('are the files that were checked, byte for byte', async () => {
    // Cross-checks that the build has drawn give some values another interval than the formula does.
    for (const [name, text] of Object.entries(files))
      if (name !== 'book.json') expect(await published(`${id}/data/${name}`)).toBe(text);
  });

  test('are all linked from their page, which says how many bytes each has', () => {
    const rows = select(page(`${id}/data/`).root, 'tr');
    const links = rows.flatMap((row) =>
      select(row, 'a').map((link) => attribute(link, 'href') ?? ''),
    );
    for (const [name, text] of Object.entries(files)) {
      expect(links.some((href) => href.endsWith(`/${id}/data/${name}`))).toBe(true);
      if (name === 'book.json') continue;
      const row = rows.find((item) => select(item, 'a').some((link) => textOf(link) === name));
      expect(row && textOf(row)).toContain(Buffer.byteLength(text).toLocaleString('en-GB'));
    }
    expect(select(page(`${id}/data/`).root, 'details')).toHaveLength(made.tables.length);
  });

  test.each(['', 'costs/', 'hours/'])('are a link away from %s', (path) => {
    const links = select(page(`${id}/${path}`).root, 'a').map((link) => attribute(link, 'href'));
    expect(links.some((href) => href?.endsWith(`/${id}/data/`))).toBe(true);
  });
});
