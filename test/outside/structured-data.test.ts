import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { openBuiltDemo } from '../site/built-book.ts';
import { attribute, readPages, select, textOf } from '../site/pages.ts';
import { VOCABULARY } from './missing.ts';
import { checkedInTerms, readVocabulary, termsOf, vocabularyErrors } from './schema-org.ts';
import { addressesIn, type Node, structuredDataOf } from './structured-data.ts';

const site = inject('site');
const { book, page } = await openBuiltDemo();
const pages = readPages(site);
const blocks = structuredDataOf(pages);
const ofType = (type: string) => blocks.filter(({ data }) => data['@type'] === type);
const on = (path: string, type: string): Node => {
  const found = ofType(type).find(({ file }) => file === `${path}index.html`);
  if (found === undefined) throw new Error(`${path} has no ${type}`);
  return found.data;
};

describe('the structured data of the demo', () => {
  test('uses the types and properties of schema.org as schema.org says', () => {
    const errors = blocks.flatMap(({ file, data }) =>
      vocabularyErrors(data, checkedInTerms).map((error) => `${file}: ${error}`),
    );
    expect(errors).toEqual([]);
  });

  test('is on every entry, spec, project and page of data, and says where each page is', () => {
    const count = (what: 'entries' | 'specs') =>
      book.projects.reduce((sum, project) => sum + project[what].length, 0);
    expect(ofType('TechArticle')).toHaveLength(count('entries'));
    expect(ofType('IndividualProduct')).toHaveLength(count('specs'));
    expect(ofType('Dataset')).toHaveLength(book.projects.length);
    expect(ofType('CreativeWorkSeries')).toHaveLength(book.projects.length);
    const listed = pages.filter(
      ({ root }) => !select(root, 'meta').some((meta) => attribute(meta, 'content') === 'noindex'),
    );
    // All but the first page of the site.
    expect(ofType('BreadcrumbList')).toHaveLength(listed.length - 1);
  });

  test('names no address that leads nowhere', () => {
    const urls = new Map(pages.map(({ url, root }) => [url, root]));
    const dead = blocks
      .flatMap(({ data }) => addressesIn(data))
      .filter((address) => {
        const [path = '', id] = address.split('#');
        const root = urls.get(path);
        if (root === undefined)
          return !existsSync(join(site.folder, path.replace(site.address, '')));
        return id !== undefined && select(root, `#${id}`).length === 0;
      });
    expect(dead).toEqual([]);
  });
});

describe('an entry', () => {
  const told = book.projects.flatMap((project) =>
    project.entries.map((entry) => ({ project, entry, path: `${project.id}/log/${entry.slug}/` })),
  );

  test('is a TechArticle with its title, day, phase and photos as on its page', () => {
    for (const { entry, path } of told) {
      const data = on(path, 'TechArticle');
      const { root } = page(path);
      expect(data['headline']).toBe(textOf(select(root, 'h1')[0] ?? root));
      expect(data['datePublished']).toBe(entry.date);
      expect([data['image'] ?? []].flat()).toHaveLength(select(root, 'figure.photo').length);
    }
  });

  test('has a video and its moments where it names one, and none elsewhere', () => {
    const filmed = told.filter(({ entry }) => entry.video);
    expect(filmed.length).toBeGreaterThan(3);
    for (const { path } of told.filter(({ entry }) => !entry.video))
      expect(on(path, 'TechArticle')).not.toHaveProperty('video');
    for (const { path } of filmed) {
      const video = on(path, 'TechArticle')['video'] as { url: string; hasPart: Node[] };
      const links = select(page(path).root, 'section.moments').flatMap((part) => select(part, 'a'));
      const hrefs = links.map((link) => attribute(link, 'href'));
      expect(hrefs).toEqual(
        expect.arrayContaining([video.url, ...video.hasPart.map((clip) => clip['url'])]),
      );
      const seconds = video.hasPart.map((clip) => Number(clip['startOffset']));
      expect(seconds).toEqual([...seconds].sort((a, b) => a - b));
    }
  });
});

test('a spec has every value of the book, with unit, uncertainty and what it was read with', () => {
  for (const project of book.projects)
    for (const { spec, history } of project.now.specs) {
      const data = on(`${project.id}/specs/${spec.id}/`, 'IndividualProduct');
      const values = [data['additionalProperty'] ?? []].flat() as Node[];
      expect(values).toHaveLength(history.length);
      for (const [index, value] of history.entries()) {
        expect(Number(values[index]?.['value']) / (value.value || 1)).toBeCloseTo(
          value.value ? 1 : 0,
          8,
        );
        expect(values[index]?.['unitText']).toBe(spec.unit);
        expect(values[index]?.['valueReference'] !== undefined).toBe(value.U !== undefined);
        if (value.kind === 'read' && value.reading.instrument)
          expect(values[index]?.['measurementTechnique']).toEqual(expect.any(String));
      }
    }
});

test('a dataset has every file with its size and SHA-256, as reckoned anew from what is published', () => {
  for (const { data } of ofType('Dataset'))
    for (const file of data['distribution'] as Node[]) {
      const bytes = readFileSync(
        join(site.folder, String(file['contentUrl']).replace(site.address, '')),
      );
      if (file['name'] === 'book.json') continue;
      expect(file['contentSize']).toBe(`${bytes.length} B`);
      expect(file['sha256']).toBe(createHash('sha256').update(bytes).digest('hex'));
    }
});

describe('the check against the vocabulary', () => {
  const sound = on('lapwing/log/2025-08-03-four-scales/', 'TechArticle');

  test.each([
    ['a misspelt property', { headlin: 'x' }, 'there is no property headlin'],
    ['a misspelt type', { '@type': 'TechArticel' }, 'there is no type TechArticel'],
    ['a property of another type', { unitCode: 'MMT' }, 'TechArticle has no unitCode'],
    [
      'a value of another type',
      { isPartOf: { '@type': 'Person', name: 'x' } },
      'isPartOf holds no Person',
    ],
    [
      'a date that is none',
      { datePublished: '3 Aug 2025' },
      'datePublished can\'t be "3 Aug 2025"',
    ],
    [
      'a number as text',
      { video: { '@type': 'VideoObject', hasPart: [{ '@type': 'Clip', startOffset: '70' }] } },
      'startOffset can\'t be "70"',
    ],
  ])('finds %s', (_, change, error) => {
    expect(vocabularyErrors(sound, checkedInTerms)).toEqual([]);
    expect(vocabularyErrors({ ...sound, ...change }, checkedInTerms)).toContain(error);
  });
});

// The whole vocabulary is not shipped by any package here, so it is used where a folder of schemas is named.
test('the terms that are checked in are those of release 30.0', ({ skip }) => {
  const { vocabulary } = inject('missing');
  skip(vocabulary !== undefined, vocabulary);
  const whole = readVocabulary(join(process.env.WITNESSMARK_SCHEMAS ?? '', VOCABULARY));
  const data = blocks.map((block) => block.data);
  expect(checkedInTerms).toEqual(termsOf(data, whole));
});
