import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { openBuiltDemo } from '../site/built-book.ts';
import { breaches } from './atom-rules.ts';
import { cell, rowsOf, stateOf } from './raw-ledger.ts';
import { readFeed } from './read-feed.ts';
import { schemaErrors } from './xml-schema.ts';

const site = inject('site');
const { book } = await openBuiltDemo();
const feeds = await Promise.all(
  book.projects.map(async ({ id }) => ({
    id,
    xml: await readFile(join(site.folder, id, 'wanted.atom'), 'utf8'),
  })),
);
const { xml } = feeds.find(({ id }) => id === 'lapwing') ?? { xml: '' };

describe.each(feeds)('the wanted feed of $id, read back by another program', ({ id, xml: own }) => {
  test('has every part still wanted and every part for sale, by the rows as another reader has them', () => {
    const parts = rowsOf(id, 'parts');
    const replaced = new Set(parts.map((row) => cell(row, 'corrects')));
    const standing = parts.filter((row) => !replaced.has(cell(row, 'id')));
    const wanted = standing.filter((row) => stateOf(row) === 'wanted');
    const offered = standing.filter(
      (row) => cell(row, 'for-sale') !== '' && ['noted', 'got'].includes(stateOf(row)),
    );
    const titles = [
      ...wanted.map((row) => `Wanted: ${cell(row, 'name')}`),
      ...offered.map((row) => `For sale: ${cell(row, 'name')}`),
    ];
    expect(
      readFeed(own)
        .entries.map(({ title }) => title.value)
        .sort(),
    ).toEqual(titles.sort());
  });

  test('was updated on the day of the newest search or step of each', () => {
    const searches = rowsOf(id, 'searches');
    for (const { id: tag, updated } of readFeed(own).entries) {
      const [, word, part = ''] = /:[a-z]+\/(wanted|for-sale)\/(.*)$/.exec(tag) ?? [];
      const row = rowsOf(id, 'parts').find((item) => cell(item, 'id') === part) ?? {};
      const days = searches
        .filter((item) => cell(item, 'part') === part)
        .map((item) => cell(item, 'date'));
      const newest =
        word === 'wanted' ? [...days, cell(row, 'wanted')].sort().at(-1) : cell(row, 'for-sale');
      expect(updated.slice(0, 10)).toBe(newest);
    }
  });

  test('names itself and the page it follows', () => {
    expect(readFeed(own).links).toEqual([
      { rel: 'self', type: 'application/atom+xml', href: `${site.address}${id}/wanted.atom` },
      { rel: 'alternate', type: 'text/html', href: `${site.address}${id}/wanted/` },
    ]);
  });
});

describe('RFC 4287, beyond its grammar', () => {
  test('is kept by every wanted feed that has an entry', () => {
    const told = feeds.filter((feed) => readFeed(feed.xml).entries.length > 0);
    expect(told.length).toBeGreaterThan(0);
    expect(told.map((feed) => breaches(feed.xml))).toEqual(told.map(() => []));
  });

  test.each([
    ['no author', /<author>.*?<\/author>/g, ''],
    ['two entries with one id', /<id>tag:[^<]*/g, '<id>tag:x.example,2026:one'],
    ['a relative address in the content', /&lt;a href=&quot;[^&]*/, '&lt;a href=&quot;/lapwing/'],
    ['a feed that is not as new as its newest entry', /<updated>2026/, '<updated>2025'],
  ])('is seen to be broken by %s', (rule, pattern, instead) => {
    expect(breaches(xml.replace(pattern, instead))).toContain(rule);
  });
});

describe('RFC 4287, by its grammar', () => {
  const schema = join(process.env.WITNESSMARK_SCHEMAS ?? '', 'atom.rng');
  const { atomSchema } = inject('missing');

  test('is kept by every wanted feed', async ({ skip }) => {
    skip(atomSchema !== undefined, atomSchema);
    for (const feed of feeds) expect(await schemaErrors(feed.xml, schema, 'relaxng')).toEqual([]);
  });

  test('is seen to be broken by an entry without a date', async ({ skip }) => {
    skip(atomSchema !== undefined, atomSchema);
    const broken = xml.replace(/(<entry>[\s\S]*?)<updated>.*?<\/updated>/, '$1');
    expect(await schemaErrors(broken, schema, 'relaxng')).not.toEqual([]);
  });
});
