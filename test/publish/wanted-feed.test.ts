import { describe, expect, test } from 'vitest';
import type { Site } from '../../src/model/kinds.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { wantedFeed } from '../../src/publish/wanted-feed.ts';
import { projectOf } from '../book/project-of.ts';
import { workshop, workshopLists } from '../parts/workshop.ts';

const site: Site = {
  title: 'A shed',
  address: 'https://shed.example/',
  language: 'en-GB',
  builder: 'Ada Venn',
  contact: 'ada@shed.example',
  moments: '{address}#t={seconds}',
};
const to = addressesOf(site.address);

describe('the wanted feed', () => {
  test('has an entry for each part that is wanted or for sale, what changed last first', () => {
    const ids = [...wantedFeed(workshop, site, to).matchAll(/<id>(tag:[^<]*)<\/id>/g)];
    expect(ids.map(([, id]) => id)).toEqual([
      'tag:shed.example,2025-03-01:drill-press/wanted/catch',
      'tag:shed.example,2025-04-20:drill-press/for-sale/spare',
      'tag:shed.example,2025-03-05:drill-press/wanted/knob',
    ]);
  });

  test('says what it fits, since when, after how many tries, for how much, and how to answer', () => {
    const lists = { ...workshopLists, parts: workshopLists.parts.slice(4, 5) };
    expect(wantedFeed(projectOf({ lists }), site, to)).toMatchInlineSnapshot(`
      "<?xml version="1.0" encoding="utf-8"?>
      <feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en-GB">
        <id>https://shed.example/drill-press/wanted/</id>
        <title>A drill press: wanted and for sale</title>
        <updated>2025-05-10T12:00:00+01:00</updated>
        <author><name>Ada Venn</name></author>
        <link rel="self" type="application/atom+xml" href="https://shed.example/drill-press/wanted.atom"/>
        <link rel="alternate" type="text/html" href="https://shed.example/drill-press/wanted/"/>
        <entry>
          <id>tag:shed.example,2025-03-01:drill-press/wanted/catch</id>
          <title>Wanted: catch</title>
          <published>2025-03-01T12:00:00+00:00</published>
          <updated>2025-05-10T12:00:00+01:00</updated>
          <category term="wanted" label="Wanted"/>
          <link rel="alternate" type="text/html" href="https://shed.example/drill-press/parts/catch/"/>
          <summary>For a 1958 Hallin 3, brakes. Looked for since 1 March 2025, 2 tries so far.</summary>
          <content type="html">&lt;p&gt;For a 1958 Hallin 3, brakes.&lt;/p&gt;&lt;p&gt;Looked for since 1 March 2025, 2 tries so far.&lt;/p&gt;&lt;p&gt;It may cost €20.00.&lt;/p&gt;&lt;p&gt;To answer: ada@shed.example&lt;/p&gt;&lt;p&gt;&lt;a href=&quot;https://shed.example/drill-press/parts/catch/&quot;&gt;catch&lt;/a&gt;&lt;/p&gt;</content>
        </entry>
      </feed>
      "
    `);
  });

  test('names what is asked for what is for sale, and the machine that it is off', () => {
    const feed = wantedFeed(workshop, site, to);
    expect(feed).toContain('<summary>A second press, Hallin 3, brakes. Asking £15.00.</summary>');
  });

  test('gives no contact where site.yaml has none', () => {
    const { contact: _, ...without } = site;
    expect(wantedFeed(workshop, without, to)).not.toContain('To answer');
  });

  test('names its entries by the first address of a site that moved', () => {
    const moved = { ...site, firstAddress: 'https://barn.example/' };
    expect(wantedFeed(workshop, moved, to)).toContain(
      '<id>tag:barn.example,2025-03-01:drill-press/wanted/catch</id>',
    );
  });

  test('escapes names once, and once more inside the content', () => {
    const [part = {}] = workshopLists.parts.slice(4, 5);
    const lists = { ...workshopLists, parts: [{ ...part, name: 'Nut & <bolt>' }] };
    const feed = wantedFeed(projectOf({ lists }), site, to);
    expect(feed).toContain('<title>Wanted: Nut &amp; &lt;bolt&gt;</title>');
    expect(feed).toContain('&gt;Nut &amp;amp; &amp;lt;bolt&amp;gt;&lt;/a&gt;');
  });

  test('without entries still has the date that RFC 4287 asks for: that of the newest row', () => {
    const lists = { ...workshopLists, parts: workshopLists.parts.slice(0, 2), searches: [] };
    const feed = wantedFeed(projectOf({ lists }), site, to);
    expect(feed).not.toContain('<entry>');
    expect(feed).toContain('<updated>2025-04-25T12:00:00+01:00</updated>');
  });
});
