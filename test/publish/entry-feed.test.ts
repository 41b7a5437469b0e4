import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { addressesOf } from '../../src/publish/address.ts';
import {
  ARCHIVED,
  archiveBefore,
  archivesOf,
  entriesIn,
  entryFeeds,
} from '../../src/publish/entry-feed.ts';
import { feedFiles } from '../../src/publish/feed-files.ts';
import { type Changes, inContentFolder, NOON } from '../check/content-folder.ts';

const entry = (day: string) =>
  `---\ntitle: Day ${day}\ndate: ${day}\nphase: rebuild\nsummary: A short day.\n---\n\nText.\n`;

/** The sound project with so many entries, one a day. */
async function feedWith(count: number, changes: Changes = {}) {
  const days = Array.from({ length: count }, (_, i) => `2025-05-${String(i + 1).padStart(2, '0')}`);
  const files = Object.fromEntries(days.map((day) => [`press/entries/${day}-x.mdx`, entry(day)]));
  const none = { 'press/entries/2025-04-13-the-ram-slides.mdx': undefined };
  const book = await inContentFolder({ ...none, ...files, ...changes }, (folder) =>
    openBook(folder, { now: NOON }),
  );
  if (book.site === undefined) throw new Error('the folder has no site');
  const to = addressesOf(book.site.address);
  const feeds = entryFeeds(book, book.site, to);
  const [feed] = feeds;
  if (feed === undefined) throw new Error('the site has no feed');
  return { site: book.site, to, feeds, feed };
}

describe('the documents of a feed', () => {
  test.each([0, 1, ARCHIVED, 2 * ARCHIVED - 1, 2 * ARCHIVED, 2 * ARCHIVED + 1, 4 * ARCHIVED + 3])(
    'hold %i entries once each, the newest first, however they are cut',
    async (count) => {
      const { feed } = await feedWith(count);
      const dates: string[] = [];
      for (let at: number | undefined, more = true; more; ) {
        dates.push(...entriesIn(feed, at).map((told) => told.date));
        at = archiveBefore(feed, at);
        more = at !== undefined;
      }
      expect(dates).toEqual(feed.entries.map((told) => told.date).reverse());
      expect(dates).toHaveLength(count);
      expect(entriesIn(feed, undefined).length).toBeGreaterThanOrEqual(Math.min(count, ARCHIVED));
    },
  );

  test('keep an archive as it was when an entry is added', async () => {
    const before = await feedWith(2 * ARCHIVED);
    const after = await feedWith(2 * ARCHIVED + 4);
    const first = ({ feed }: typeof before) => entriesIn(feed, 1).map((told) => told.file);
    expect(archivesOf(before.feed)).toBe(1);
    expect(first(after)).toEqual(first(before));
  });

  test('lead from one to the next and back, by RFC 5005', async () => {
    const { feeds, site, to } = await feedWith(3 * ARCHIVED);
    const files = new Map(
      feedFiles(feeds, { site, to, htmlOf: () => '' }).map(({ path, text }) => [path, text]),
    );
    const links = (path: string) =>
      [
        ...(files.get(path) ?? '').matchAll(
          /<link rel="(current|self|prev-archive|next-archive)"[^>]*href="([^"]*)"/g,
        ),
      ].map(([, rel, href]) => `${rel} ${href?.replace('https://shed.example', '')}`);
    expect(links('/feed.atom')).toEqual(['self /feed.atom', 'prev-archive /feed/2.atom']);
    expect(links('/feed/2.atom')).toEqual([
      'self /feed/2.atom',
      'current /feed.atom',
      'prev-archive /feed/1.atom',
    ]);
    expect(links('/press/feed/1.atom')).toEqual([
      'self /press/feed/1.atom',
      'current /press/feed.atom',
      'next-archive /press/feed/2.atom',
    ]);
    expect(files.get('/feed/1.atom')).toContain('<fh:archive/>');
    expect(files.get('/feed.atom')).not.toContain('archive/>');
    const next = (path: string) => JSON.parse(files.get(path) ?? '{}').next_url;
    expect([next('/feed.json'), next('/feed/2.json'), next('/feed/1.json')]).toEqual([
      'https://shed.example/feed/2.json',
      'https://shed.example/feed/1.json',
      undefined,
    ]);
  });
});

describe('the id of an entry', () => {
  const idWith = async (yaml: string) => {
    const { feed } = await feedWith(1, { 'site.yaml': ['builder:', `${yaml}builder:`] });
    return feed.entries[0]?.id;
  };

  test('is of the host, the day and the file name', async () => {
    expect(await idWith('')).toBe('tag:shed.example,2025-05-01:press/2025-05-01-x');
  });

  test('stays when the entry has moved, twice too', async () => {
    const moved = `moved:
  - from: press/log/2025-04-30-a/
    to: press/log/2025-05-01-b/
  - from: press/log/2025-05-01-b/
    to: press/log/2025-05-01-x/
`;
    expect(await idWith(moved)).toBe('tag:shed.example,2025-04-30:press/2025-04-30-a');
  });

  test('stays when the site has another host', async () => {
    expect(await idWith('firstAddress: https://barn.example/log/\n')).toBe(
      'tag:barn.example,2025-05-01:press/2025-05-01-x',
    );
  });
});
