import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseJsonFeed } from 'feedsmith';
import { describe, expect, inject, test } from 'vitest';
import { openBuiltDemo } from '../site/built-book.ts';
import { jsonFeedErrors } from './json-feed-rules.ts';
import { readFeed } from './read-feed.ts';

const site = inject('site');
const { book } = await openBuiltDemo();
const read = (address: string) =>
  readFile(join(site.folder, address.replace(site.address, '')), 'utf8');

/** Every document of a feed, from the newest on. */
async function documentsOf(address: string) {
  const documents: string[] = [];
  for (let next: string | undefined = address; next !== undefined; ) {
    const text: string = await read(next);
    documents.push(text);
    next = parseJsonFeed(text).next_url;
  }
  return documents;
}

const feeds = await Promise.all(
  ['', ...book.projects.map(({ id }) => `${id}/`)].map(async (path) => ({
    path,
    documents: await documentsOf(`${site.address}${path}feed.json`),
  })),
);

describe.each(feeds)('feed.json of /$path', ({ path, documents }) => {
  test('keeps to JSON Feed 1.1, with the version first', () => {
    for (const text of documents) {
      expect(jsonFeedErrors(JSON.parse(text))).toEqual([]);
      expect(Object.keys(JSON.parse(text))[0]).toBe('version');
    }
  });

  test('lists the same entries as the Atom feed, with the same ids, times and text, by another reader', async () => {
    const items = documents.flatMap((text) => parseJsonFeed(text).items ?? []);
    const entries: ReturnType<typeof readFeed>['entries'] = [];
    for (let next: string | undefined = `${site.address}${path}feed.atom`; next; ) {
      const feed = readFeed(await read(next));
      entries.push(...feed.entries);
      next = feed.links.find(({ rel }) => rel === 'prev-archive')?.href;
    }
    const bare = items.map((item) => [item.id, item.title, item.date_published, item.content_html]);
    expect(bare).toEqual(
      entries.map(({ id, title, published, content }) => [
        id,
        title.value,
        published,
        content.value,
      ]),
    );
    expect(items.length).toBeGreaterThan(5);
  });

  // The specification calls 100 kB ideal and asks not to go much beyond 250 kB.
  test('has no document that is larger than readers care to fetch', () => {
    expect(Math.max(...documents.map((text) => Buffer.byteLength(text)))).toBeLessThan(250_000);
  });
});

describe('the rules of JSON Feed', () => {
  const sound = JSON.parse(feeds[0]?.documents[0] ?? '{}');
  const [item] = sound.items;

  test.each([
    ['no version', { version: undefined }],
    ['another version', { version: 'https://jsonfeed.org/version/1' }],
    ['a relative address', { feed_url: '/feed.json' }],
    ['a field that there is none of', { author: { name: 'x' } }],
    ['an item without an id', { items: [{ ...item, id: undefined }] }],
    ['an item with a number for an id', { items: [{ ...item, id: 7 }] }],
    ['an item without content', { items: [{ ...item, content_html: undefined }] }],
    ['a day for a time', { items: [{ ...item, date_published: '2026-01-02' }] }],
    ['two items with one id', { items: [item, item] }],
    ['an author who is nobody', { authors: [{}] }],
  ])('are seen to be broken by %s', (_, change) => {
    expect(jsonFeedErrors(sound)).toEqual([]);
    expect(jsonFeedErrors({ ...sound, ...change })).not.toEqual([]);
  });
});
