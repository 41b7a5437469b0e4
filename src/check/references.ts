import type { z } from 'zod';
import { refOf } from '../model/facts.ts';
import { type ListKind, listKinds, singleKinds } from '../model/kinds.ts';
import { suggest } from '../read/nearest.ts';
import { type Place, type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { KnownIds } from './known-ids.ts';
import type { Rule } from './rule.ts';

/** What one record of each kind is called in a message. */
const SINGULAR: Readonly<Record<string, string>> = {
  phases: 'phase',
  sources: 'source',
  specs: 'spec',
  instruments: 'instrument',
  photos: 'photo',
  parts: 'part',
  rows: 'ledger row',
  work: 'kind of work',
  people: 'person',
  entries: 'entry',
  costs: 'cost row',
  systems: 'system',
};

/** Every id that a record or an entry's front matter names exists. */
export const referencesExist: Rule = ({ project, known }) => {
  const lists = (Object.keys(listKinds) as ListKind[]).flatMap((kind) =>
    project.lists[kind].flatMap(({ raw }) => unknownIn(raw, [], listKinds[kind].shape, known)),
  );
  const entries = project.entries.flatMap(({ raw, value }) => [
    ...unknownIn(raw, [], singleKinds.entry.shape, known),
    ...(value.moments ?? []).flatMap((_, index) =>
      unknownIn(raw, ['moments', index], MOMENT_REFS, known),
    ),
  ]);
  return [...lists, ...entries];
};

const MOMENT_REFS = (singleKinds.entry.shape.moments.unwrap() as z.ZodArray<z.ZodObject>).element
  .shape;

function unknownIn(
  raw: RawRecord,
  path: readonly (string | number)[],
  shape: Readonly<Record<string, unknown>>,
  known: KnownIds,
): Problem[] {
  return Object.entries(shape).flatMap(([field, schema]) => {
    const kind = refOf(schema as z.ZodType);
    if (kind === undefined) return [];
    return idsAt(raw, [...path, field]).flatMap(({ id, place }) =>
      unknownId(id, kind, place, known),
    );
  });
}

/** A problem when no record of the kind has the id. */
export function unknownId(id: string, kind: string, place: Place, known: KnownIds): Problem[] {
  const ids = known.get(kind);
  if (ids === undefined || ids.includes(id)) return [];
  return [
    problemAt(
      place,
      'id/unknown',
      `unknown ${SINGULAR[kind] ?? kind} "${id}"`,
      suggest(id, ids) ?? whereToAdd(kind),
    ),
  ];
}

function whereToAdd(kind: string): string {
  if (kind === 'work' || kind === 'people') return `add it to "${kind}" in project.yaml`;
  return kind === 'rows'
    ? 'name the id of a row in ledger/'
    : `add it to ${kind}.yaml or ${kind}.csv`;
}

function idsAt(raw: RawRecord, path: readonly (string | number)[]): { id: string; place: Place }[] {
  let value: unknown = raw.value;
  for (const step of path) value = (value as Record<string | number, unknown> | undefined)?.[step];
  if (typeof value === 'string')
    return value
      .split(/\s+/)
      .filter((id) => id !== '')
      .map((id) => ({ id, place: raw.placeOf(path) }));
  return Array.isArray(value)
    ? value.map((id, index) => ({ id: String(id).trim(), place: raw.placeOf([...path, index]) }))
    : [];
}
