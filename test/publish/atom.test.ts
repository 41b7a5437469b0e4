import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { escapeXml } from '../../src/draw/svg.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { atomFeed } from '../../src/publish/atom.ts';
import { entryFeeds } from '../../src/publish/entry-feed.ts';
import { plainHtml } from '../../src/publish/plain-html.ts';
import { wordsOf } from '../../src/words/words.ts';
import { type Changes, inContentFolder, NOON } from '../check/content-folder.ts';

async function feedOf(changes: Changes): Promise<string> {
  const book = await inContentFolder(changes, (folder) => openBook(folder, { now: NOON }));
  if (book.site === undefined) throw new Error('the folder has no site');
  const to = addressesOf(book.site.address);
  const htmlOf = ({ title }: { title: string }) =>
    plainHtml(`<p>Text of ${escapeXml(title)}.</p>`, {
      address: 'https://shed.example/',
      words: wordsOf('en'),
    });
  const [feed] = entryFeeds(book, book.site, to);
  if (feed === undefined) throw new Error('the site has no feed');
  return atomFeed(feed, { site: book.site, to, htmlOf });
}

const entry = (title: string, date: string) =>
  `---\ntitle: ${title}\ndate: ${date}\nphase: rebuild\nsummary: A short day.\n---\n\nText.\n`;

const idsIn = (feed: string) => [...feed.matchAll(/<id>(tag:[^<]*)<\/id>/g)].map(([, id]) => id);

describe('atomFeed', () => {
  test('has one entry for each of the log, with its day, summary and text', async () => {
    expect(await feedOf({})).toMatchInlineSnapshot(`
      "<?xml version="1.0" encoding="utf-8"?>
      <feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en-GB">
        <id>https://shed.example/</id>
        <title>A shed and a press</title>
        <updated>2025-04-13T12:00:00+01:00</updated>
        <author><name>Ines Marlow</name></author>
        <link rel="self" type="application/atom+xml" href="https://shed.example/feed.atom"/>
        <link rel="alternate" type="text/html" href="https://shed.example/"/>
        <entry>
          <id>tag:shed.example,2025-04-13:press/2025-04-13-the-ram-slides</id>
          <title>The ram slides</title>
          <published>2025-04-13T12:00:00+01:00</published>
          <updated>2025-04-13T12:00:00+01:00</updated>
          <category term="press" label="Wendlebury press"/>
          <link rel="alternate" type="text/html" href="https://shed.example/press/log/2025-04-13-the-ram-slides/"/>
          <summary>The gib is in and the play is gone.</summary>
          <content type="html">&lt;p&gt;The gib is in and the play is gone.&lt;/p&gt;
      &lt;p&gt;Text of The ram slides.&lt;/p&gt;</content>
        </entry>
      </feed>
      "
    `);
  });

  test('puts the newest entry first, and dates the feed by it', async () => {
    const feed = await feedOf({
      'press/entries/2025-03-03-first.mdx': entry('First', '2025-03-03'),
      'press/entries/2025-05-04-last.mdx': entry('Last', '2025-05-04'),
    });
    expect(idsIn(feed)).toEqual([
      'tag:shed.example,2025-05-04:press/2025-05-04-last',
      'tag:shed.example,2025-04-13:press/2025-04-13-the-ram-slides',
      'tag:shed.example,2025-03-03:press/2025-03-03-first',
    ]);
    expect(feed).toContain('\n  <updated>2025-05-04T12:00:00+01:00</updated>');
  });

  test("gives noon in the project's own zone, summer time and winter time", async () => {
    const feed = await feedOf({
      'press/entries/2025-03-03-first.mdx': entry('First', '2025-03-03'),
      'press/project.yaml': ['Europe/London', 'Europe/Dublin'],
    });
    expect(feed).toContain('<published>2025-04-13T12:00:00+01:00</published>');
    expect(feed).toContain('<published>2025-03-03T12:00:00+00:00</published>');
  });

  test("keeps an entry's id when its title changes", async () => {
    const file = 'press/entries/2025-04-13-the-ram-slides.mdx';
    const renamed = await feedOf({ [file]: ['title: The ram slides', 'title: It slides'] });
    expect(renamed).toContain('<title>It slides</title>');
    expect(idsIn(renamed)).toEqual(idsIn(await feedOf({})));
  });

  test('escapes titles once, and once more inside the content', async () => {
    const feed = await feedOf({
      'press/entries/2025-03-03-first.mdx': entry('Nuts & <bolts>', '2025-03-03'),
    });
    expect(feed).toContain('<title>Nuts &amp; &lt;bolts&gt;</title>');
    expect(feed).toContain('&lt;p&gt;Text of Nuts &amp;amp; &amp;lt;bolts&amp;gt;.&lt;/p&gt;');
  });

  test('names the builder of a project where it is not the builder of the site', async () => {
    const feed = await feedOf({
      'press/project.yaml': ['currency: GBP', 'currency: GBP\nbuilder: Tom Ashby'],
    });
    expect(feed).toContain('  <author><name>Ines Marlow</name></author>');
    expect(feed).toContain('    <author><name>Tom Ashby</name></author>');
  });

  test('of a log without entries is a feed that still has the date that RFC 4287 asks for', async () => {
    const feed = await feedOf({ 'press/entries/2025-04-13-the-ram-slides.mdx': undefined });
    expect(feed).not.toContain('<entry>');
    expect(feed).toMatch(/<updated>[-\d]{10}T[:\d]{8}\+00:00<\/updated>/);
  });
});
