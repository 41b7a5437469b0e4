import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseFragment } from 'parse5';
import { describe, expect, inject, test } from 'vitest';
import { addedSince } from '../../src/book/added.ts';
import type { Entry, Project } from '../../src/book/types.ts';
import { showMoney } from '../../src/money/money.ts';
import { showDuration } from '../../src/time/duration.ts';
import { openBuiltDemo } from '../site/built-book.ts';
import { select, textOf } from '../site/pages.ts';
import { breaches } from './atom-rules.ts';
import { readFeed } from './read-feed.ts';
import { schemaErrors } from './xml-schema.ts';

const site = inject('site');
const { book } = await openBuiltDemo();
const xml = await readFile(join(site.folder, 'feed.atom'), 'utf8');

const feed = readFeed(xml);

type Told = { readonly project: Project; readonly entry: Entry };
const idOf = ({ project, entry }: Told) =>
  `tag:${new URL(site.address).hostname},${entry.date}:${project.id}/${entry.slug}`;

function inFeed(told: Told): (typeof feed.entries)[number] {
  const entry = feed.entries.find(({ id }) => id === idOf(told));
  if (entry === undefined) throw new Error(`the feed has no entry ${idOf(told)}`);
  return entry;
}

describe('the feed, read back by another program', () => {
  const told = book.projects.flatMap((project) =>
    project.entries.map((entry) => ({ project, entry })),
  );

  test('has the ids, days and titles of all entries of the book', () => {
    const { entries } = feed;
    expect(entries.map(({ id }) => id).sort()).toEqual(told.map(idOf).sort());
    for (const { project, entry } of told) {
      const { title, published, updated } = inFeed({ project, entry });
      const day = `${entry.date}T12:00:00`;
      expect([title.value, published.slice(0, -6), updated.slice(0, -6)]).toEqual([
        entry.title,
        day,
        day,
      ]);
    }
  });

  test('has the running totals of the book on the day of each entry', () => {
    for (const { project, entry } of told) {
      const cells = select(parseFragment(inFeed({ project, entry }).content.value), 'td');
      const { hoursByPhase, costsByCategory } = project.asOf(entry.date);
      const { allFitted, allReadings } = addedSince(project.asOf(entry.date), entry);
      expect(cells.map(textOf).filter((_, index) => index % 2 === 1)).toEqual([
        showDuration(hoursByPhase.total.value),
        showMoney(costsByCategory.total.value, 'en-GB'),
        String(allFitted.value),
        String(allReadings.value),
      ]);
    }
  });

  test('names itself and the site', () => {
    expect(feed.links).toEqual([
      { rel: 'self', type: 'application/atom+xml', href: `${site.address}feed.atom` },
      { rel: 'alternate', type: 'text/html', href: site.address },
    ]);
  });
});

describe('RFC 4287, beyond its grammar', () => {
  test('is kept by the feed', () => {
    expect(breaches(xml)).toEqual([]);
  });

  test.each([
    ['no author', /<author>.*?<\/author>/g, ''],
    ['an id that is no IRI', /<id>tag:[^<]*/, '<id>lapwing/first entry'],
    ['two entries with one id', /<id>tag:[^<]*/g, '<id>tag:x.example,2026:one'],
    [
      'neither content nor alternate',
      /<content[\s\S]*?<\/content>|<link rel="alternate"[^>]*>/g,
      '',
    ],
    ['a relative address in the content', /&lt;a href=&quot;[^&]*/, '&lt;a href=&quot;/lapwing/'],
    ['updated before published', /(<entry>[\s\S]*?<updated>)2026/, '$12025'],
    ['a feed that is not as new as its newest entry', /<updated>2026/, '<updated>2025'],
  ])('is seen to be broken by %s', (rule, pattern, instead) => {
    expect(breaches(xml.replace(pattern, instead))).toContain(rule);
  });
});

// RELAX NG of RFC 4287 appendix B: not shipped by any package here, so it is used where a folder of schemas is named.
describe('RFC 4287, by its grammar', () => {
  const schema = join(process.env.WITNESSMARK_SCHEMAS ?? '', 'atom.rng');
  const { atomSchema } = inject('missing');

  test('is kept by the feed', async ({ skip }) => {
    skip(atomSchema !== undefined, atomSchema);
    expect(await schemaErrors(xml, schema, 'relaxng')).toEqual([]);
  });

  test.for([
    ['an entry without a date', /(<entry>[\s\S]*?)<updated>.*?<\/updated>/, '$1'],
    ['a date without a time', /<updated>(\d{4}-\d\d-\d\d)T[^<]*/, '<updated>$1'],
    ['a feed without an id', /<id>.*?<\/id>/, ''],
  ] as const)('is seen to be broken by %s', async ([, pattern, instead], { skip }) => {
    skip(atomSchema !== undefined, atomSchema);
    expect(await schemaErrors(xml.replace(pattern, instead), schema, 'relaxng')).not.toEqual([]);
  });
});
