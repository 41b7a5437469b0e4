import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseFragment } from 'parse5';
import { describe, expect, inject, test } from 'vitest';
import type { Entry, Project } from '../../src/book/types.ts';
import { showMoney } from '../../src/money/money.ts';
import { showDuration } from '../../src/time/duration.ts';
import { openBuiltDemo } from '../site/built-book.ts';
import { attribute, select, textOf } from '../site/pages.ts';
import { breaches } from './atom-rules.ts';
import { readFeed } from './read-feed.ts';
import { schemaErrors } from './xml-schema.ts';

const site = inject('site');
const { book, page } = await openBuiltDemo();

type Told = { readonly project: Project; readonly entry: Entry };
const told: readonly Told[] = book.projects.flatMap((project) =>
  project.entries.map((entry) => ({ project, entry })),
);
const idOf = ({ project, entry }: Told) =>
  `tag:${new URL(site.address).hostname},${entry.date}:${project.id}/${entry.slug}`;

/** A feed as a reader has it that fetches every document before the newest one (RFC 5005 §4). */
async function documentsOf(address: string) {
  const documents: { address: string; xml: string; feed: ReturnType<typeof readFeed> }[] = [];
  for (let next: string | undefined = address; next !== undefined; ) {
    const xml: string = await readFile(join(site.folder, next.replace(site.address, '')), 'utf8');
    const feed = readFeed(xml);
    documents.push({ address: next, xml, feed });
    next = feed.links.find(({ rel }) => rel === 'prev-archive')?.href;
  }
  return documents;
}

const feeds = await Promise.all(
  [
    { name: 'the site', path: '', own: told },
    ...book.projects.map((project) => ({
      name: project.id,
      path: `${project.id}/`,
      own: told.filter((item) => item.project === project),
    })),
  ].map(async ({ path, ...rest }) => ({
    ...rest,
    home: `${site.address}${path}`,
    documents: await documentsOf(`${site.address}${path}feed.atom`),
  })),
);
const xml = feeds[0]?.documents[0]?.xml ?? '';
const whole = feeds[0]?.documents.flatMap(({ feed }) => feed.entries) ?? [];

function inFeed(item: Told): (typeof whole)[number] {
  const entry = whole.find(({ id }) => id === idOf(item));
  if (entry === undefined) throw new Error(`the feed has no entry ${idOf(item)}`);
  return entry;
}

describe.each(feeds)(
  'the feed of $name, read back by another program',
  ({ home, own, documents }) => {
    test('has every entry of the book once, the newest first', () => {
      const entries = documents.flatMap(({ feed }) => feed.entries);
      const days = entries.map(({ updated }) => Date.parse(updated));
      expect(entries.map(({ id }) => id).sort()).toEqual(own.map(idOf).sort());
      expect(days).toEqual([...days].sort((a, b) => b - a));
    });

    test('names itself, the page it follows, and the newest document', () => {
      for (const { address, feed } of documents) {
        const links = feed.links.map(({ rel, href }) => [rel, href]);
        expect(links).toContainEqual(['self', address]);
        expect(links).toContainEqual(['alternate', home]);
        expect(links.some(([rel]) => rel === 'current')).toBe(address !== `${home}feed.atom`);
      }
    });
  },
);

describe('an entry of the feed', () => {
  test('has the day and title of the book', () => {
    for (const item of told) {
      const { title, published, updated } = inFeed(item);
      const day = `${item.entry.date}T12:00:00`;
      const read = [title.value, published.slice(0, -6), updated.slice(0, -6)];
      expect(read).toEqual([item.entry.title, day, day]);
    }
  });

  test('has the whole text of its page', () => {
    const words = (text: string) => text.replace(/[^\p{L}\p{N}]+/gu, ' ');
    for (const item of told) {
      const content = parseFragment(inFeed(item).content.value);
      const [article] = select(page(`${item.project.id}/log/${item.entry.slug}/`).root, 'article');
      if (article === undefined) throw new Error('the page has no article');
      const read = words(textOf(content));
      const written = article.childNodes.flatMap((child) =>
        'tagName' in child && child.tagName === 'p' ? words(textOf(child)) : [],
      );
      // What is folded behind a number stays on the page.
      const plain = written.filter((text) => !/ rows? |hours? /.test(text));
      expect(plain.length).toBeGreaterThan(0);
      expect(plain.filter((text) => text.length > 80 && !read.includes(text.slice(0, 40)))).toEqual(
        [],
      );
      expect(select(content, 'img')).toHaveLength(select(article, 'img').length);
      expect(select(content, 'h2').map(textOf)).toEqual(select(article, 'h2').map(textOf));
    }
  });

  test('has the running totals of the book on its day', () => {
    for (const { project, entry } of told) {
      const cells = select(parseFragment(inFeed({ project, entry }).content.value), 'td').map(
        textOf,
      );
      const { hoursByPhase, costsByCategory } = project.asOf(entry.date);
      expect(cells).toContain(`${showDuration(hoursByPhase.total.value)} h`);
      expect(cells).toContain(showMoney(costsByCategory.total.value, 'en-GB'));
    }
  });

  test('holds nothing that runs, and nothing that needs a style', () => {
    for (const item of told) {
      const elements = select(parseFragment(inFeed(item).content.value), '*');
      const names = new Set(elements.map(({ tagName }) => tagName));
      for (const name of ['script', 'style', 'svg', 'iframe', 'form', 'button', 'details'])
        expect(names).not.toContain(name);
      const attributes = new Set(elements.flatMap(({ attrs }) => attrs.map(({ name }) => name)));
      expect([...attributes].filter((name) => /^on|^style$|^class$|^id$/.test(name))).toEqual([]);
      const schemes = elements.flatMap((element) =>
        ['href', 'src'].flatMap((name) => attribute(element, name) ?? []),
      );
      expect(schemes.filter((address) => !/^https:/.test(address))).toEqual([]);
    }
  });
});

describe('RFC 4287, beyond its grammar', () => {
  test('is kept by every document', () => {
    for (const { documents } of feeds)
      for (const document of documents) expect(breaches(document.xml)).toEqual([]);
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

  test('is kept by every document', async ({ skip }) => {
    skip(atomSchema !== undefined, atomSchema);
    for (const { documents } of feeds)
      for (const document of documents)
        expect(await schemaErrors(document.xml, schema, 'relaxng')).toEqual([]);
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
