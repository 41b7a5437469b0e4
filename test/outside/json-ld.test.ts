import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import jsonld from 'jsonld';
import { describe, expect, inject, test } from 'vitest';
import { openBuiltDemo } from '../site/built-book.ts';
import { readPages } from '../site/pages.ts';
import { type Node, structuredDataOf } from './structured-data.ts';

const SCHEMA = 'http://schema.org/';

// The W3C's JSON-LD 1.1 by a processor not ours (npm jsonld). The context is the one that schema.org publishes (release 30.0), where a
// folder of schemas is named, or else what matters of it: terms are those of the vocabulary, and `url` holds an address.
const published = join(process.env.WITNESSMARK_SCHEMAS ?? '', 'schemaorg-30.0-context.jsonld');
const CONTEXT = existsSync(published)
  ? JSON.parse(readFileSync(published, 'utf8'))
  : { '@context': { '@vocab': SCHEMA, url: { '@type': '@id' } } };

const site = inject('site');
const { book } = await openBuiltDemo();
const blocks = structuredDataOf(readPages(site));

interface Triple {
  readonly subject: string;
  readonly predicate: string;
  readonly object: string;
}

type Quad = Readonly<Record<keyof Triple, { readonly value: string }>>;

/** What a reader of linked data makes of a block; anything it would drop in silence is an error. */
async function triplesOf(data: Node): Promise<Triple[]> {
  // Its types lag behind: `safe` is missing from them, and what comes back has no shape there.
  const options = {
    documentLoader: async (url: string) => ({ documentUrl: url, document: CONTEXT }),
    safe: true,
  } as jsonld.Options.ToRdf;
  const quads = (await jsonld.toRDF(data as jsonld.JsonLdDocument, options)) as unknown as Quad[];
  return quads.map(({ subject, predicate, object }) => ({
    subject: subject.value,
    predicate: predicate.value,
    object: object.value,
  }));
}

describe('structured data, read by a processor of linked data', () => {
  test('loses nothing, and says only what schema.org has words for', async () => {
    const foreign = new Set<string>();
    for (const { data } of blocks) {
      const triples = await triplesOf(data);
      expect(triples.length).toBeGreaterThan(2);
      for (const { predicate } of triples)
        if (!/^http:\/\/(schema\.org\/|www\.w3\.org\/1999\/02\/22-rdf-syntax-ns#)/.test(predicate))
          foreign.add(predicate);
    }
    expect([...foreign]).toEqual([]);
  });

  test('tells the same values of a spec as the book', async () => {
    for (const project of book.projects)
      for (const { spec, history } of project.now.specs) {
        const block = blocks.find(
          ({ file }) => file === `${project.id}/specs/${spec.id}/index.html`,
        );
        const specs = blocks.filter(
          ({ file, data }) => file === block?.file && data['@type'] === 'IndividualProduct',
        );
        expect(specs).toHaveLength(1);
        const triples = await triplesOf(specs[0]?.data ?? {});
        const properties = triples
          .filter(({ predicate }) => predicate === `${SCHEMA}additionalProperty`)
          .map(({ object }) => object);
        const values = triples
          .filter(
            ({ subject, predicate }) =>
              predicate === `${SCHEMA}value` && properties.includes(subject),
          )
          .map(({ object }) => Number(object));
        const expected = history.map(({ value }) => value);
        expect(values).toHaveLength(expected.length);
        for (const [index, value] of inOrder(values).entries()) {
          const other = inOrder(expected)[index] ?? Number.NaN;
          // Numbers are published to ten digits.
          expect(Math.abs(value - other)).toBeLessThanOrEqual(1e-9 * Math.abs(other));
        }
      }
  });

  test.each([
    ['a key that no context knows', { '@context': { name: `${SCHEMA}name` }, name: 'x', odd: 'y' }],
    ['a type that is no address', { '@context': {}, '@type': 'Loose', [`${SCHEMA}name`]: 'x' }],
    [
      'an id that is not whole',
      { '@context': 'https://schema.org', '@id': 'not whole', name: 'x' },
    ],
  ])('refuses %s', async (_, planted) => {
    await expect(triplesOf(planted)).rejects.toThrow();
  });
});

const inOrder = (values: readonly number[]) => [...values].sort((a, b) => a - b);
