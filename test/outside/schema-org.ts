import { readFileSync } from 'node:fs';
import type { Node } from './structured-data.ts';

/** Types with the types above them, and properties with the types that have them and the types of their values. */
export interface Vocabulary {
  readonly types: Readonly<Record<string, readonly string[]>>;
  readonly properties: Readonly<
    Record<string, { readonly of: readonly string[]; readonly holds: readonly string[] }>
  >;
}

/**
 * The terms that our pages use, taken out of the vocabulary of schema.org, release 30.0
 * (schemaorg-all-https.jsonld of github.com/schemaorg/schemaorg). Superseded terms are not in it.
 */
export const checkedInTerms: Vocabulary = JSON.parse(
  readFileSync(new URL('schema-org-terms.json', import.meta.url), 'utf8'),
);

type Term = { readonly '@id': string; readonly [key: string]: unknown };

/** The whole vocabulary from the file that schema.org publishes. */
export function readVocabulary(file: string): Vocabulary {
  const { '@graph': graph } = JSON.parse(readFileSync(file, 'utf8')) as { '@graph': Term[] };
  const current = graph.filter((term) => term['schema:supersededBy'] === undefined);
  const isProperty = (term: Term) => term['@type'] === 'rdf:Property';
  return {
    types: Object.fromEntries(
      current
        .filter((term) => !isProperty(term))
        .map((term) => [nameOf(term), namesIn(term['rdfs:subClassOf'])]),
    ),
    properties: Object.fromEntries(
      current.filter(isProperty).map((term) => [
        nameOf(term),
        {
          of: namesIn(term['schema:domainIncludes']),
          holds: namesIn(term['schema:rangeIncludes']),
        },
      ]),
    ),
  };
}

const nameOf = (term: { '@id': string }) => term['@id'].replace('schema:', '');

function namesIn(value: unknown): string[] {
  if (value === undefined) return [];
  return [value].flat().map((term) => nameOf(term as Term));
}

/** What of a vocabulary some data needs: their terms, and all types above those. */
export function termsOf(data: readonly Node[], { types, properties }: Vocabulary): Vocabulary {
  const used = new Set<string>();
  const named = new Set<string>();
  const walk = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    for (const [key, inner] of Object.entries(value)) {
      if (key === '@type') for (const type of above(String(inner), types)) used.add(type);
      if (!Array.isArray(value) && !key.startsWith('@')) named.add(key);
      walk(inner);
    }
  };
  walk(data);
  const pick = <T>(from: Readonly<Record<string, T>>, names: ReadonlySet<string>) =>
    Object.fromEntries(
      [...names].sort().flatMap((name) => {
        const value = from[name];
        return value === undefined ? [] : [[name, value] as const];
      }),
    );
  return { types: pick(types, used), properties: pick(properties, named) };
}

function above(type: string, types: Vocabulary['types']): string[] {
  return [type, ...(types[type] ?? []).flatMap((parent) => above(parent, types))];
}

/** What is wrong with some data by a vocabulary, each once. */
export function vocabularyErrors(data: Node, vocabulary: Vocabulary): string[] {
  return [...new Set(errorsIn(data, vocabulary))];
}

function errorsIn(node: Node, vocabulary: Vocabulary): string[] {
  const type = String(node['@type']);
  if (!(type in vocabulary.types)) return [`there is no type ${type}`];
  const own = new Set(above(type, vocabulary.types));
  return Object.entries(node).flatMap(([name, value]) => {
    if (name.startsWith('@')) return [];
    const property = vocabulary.properties[name];
    if (property === undefined) return [`there is no property ${name}`];
    if (!property.of.some((domain) => own.has(domain))) return [`${type} has no ${name}`];
    return [value].flat().flatMap((item) => {
      if (typeof item === 'object' && item !== null) {
        const inner = above(String((item as Node)['@type']), vocabulary.types);
        const fits = property.holds.some((holds) => inner.includes(holds));
        return [
          ...(fits ? [] : [`${name} holds no ${inner[0]}`]),
          ...errorsIn(item as Node, vocabulary),
        ];
      }
      return plainFits(item, property.holds) ? [] : [`${name} can't be ${JSON.stringify(item)}`];
    });
  });
}

const DATE = /^\d{4}(-\d\d(-\d\d)?)?(T.*)?$/;

/** Whether a text, a number or a truth value is one of the data types that a property holds. */
function plainFits(value: unknown, holds: readonly string[]): boolean {
  const has = (...types: string[]) => types.some((type) => holds.includes(type));
  if (typeof value === 'boolean') return has('Boolean');
  if (typeof value === 'number')
    return has('Number') || (Number.isInteger(value) && has('Integer'));
  if (typeof value !== 'string') return false;
  return (
    has('Text') ||
    (URL.canParse(value) &&
      (has('URL') || !has('Date', 'DateTime', 'Number', 'Integer', 'Boolean'))) ||
    (DATE.test(value) && has('Date', 'DateTime'))
  );
}
