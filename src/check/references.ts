import type { z } from 'zod';
import { calloutSchema } from '../model/callout.ts';
import { refOf } from '../model/facts.ts';
import { type ListKind, listKinds, rowKinds, singleKinds } from '../model/kinds.ts';
import { suggest } from '../read/nearest.ts';
import { oneSlipFrom } from '../read/one-slip.ts';
import { type Place, type Problem, problemAt, withMend } from '../read/problem.ts';
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
  hours: 'hours row',
  orders: 'order',
  budgets: 'budget line',
  readings: 'reading',
  rates: 'rate',
  searches: 'search',
  surveys: 'survey',
  grades: 'grade',
  groups: 'group of parts',
  findings: 'finding',
  candidates: 'candidate',
  choices: 'choice',
  preparations: 'preparation',
  waits: 'wait',
  systems: 'system',
  donors: 'donor machine',
  'parts-or-groups': 'part or group of parts',
};

/** Every id that a record, a callout or an entry's front matter names exists. */
export const referencesExist: Rule = ({ project, known }) => {
  const lists = (Object.keys(listKinds) as ListKind[]).flatMap((kind) => {
    const refs = refsOf(listKinds[kind].shape);
    return project.lists[kind].flatMap(({ raw }) => unknownIn(raw, [], refs, known));
  });
  const entries = project.entries.flatMap(({ raw, value }) => [
    ...unknownIn(raw, [], ENTRY_REFS, known),
    ...(value.moments ?? []).flatMap((_, index) =>
      unknownIn(raw, ['moments', index], MOMENT_REFS, known),
    ),
  ]);
  const callouts = project.lists.photos.flatMap(({ raw, value }) =>
    (value.callouts ?? []).flatMap((_, index) =>
      unknownIn(raw, ['callouts', index], CALLOUT_REFS, known),
    ),
  );
  return [...lists, ...entries, ...callouts];
};

/** The fields of a record that name others, and the kind they name: worked out once, not for each of many rows. */
type Refs = readonly (readonly [field: string, kind: string])[];

function refsOf(shape: Readonly<Record<string, unknown>>): Refs {
  return Object.entries(shape).flatMap(([field, schema]) => {
    const kind = refOf(schema as z.ZodType);
    return kind === undefined ? [] : [[field, kind] as const];
  });
}

const ENTRY_REFS = refsOf(singleKinds.entry.shape);
const MOMENT_REFS = refsOf(
  (singleKinds.entry.shape.moments.unwrap() as z.ZodArray<z.ZodObject>).element.shape,
);
const CALLOUT_REFS = refsOf(calloutSchema.shape);

function unknownIn(
  raw: RawRecord,
  path: readonly (string | number)[],
  refs: Refs,
  known: KnownIds,
): Problem[] {
  return refs.flatMap(([field, kind]) =>
    idsAt(raw, [...path, field]).flatMap(({ id, place }) => unknownId(id, kind, place, known)),
  );
}

/** A problem when no record of the kind has the id. */
export function unknownId(id: string, kind: string, place: Place, known: KnownIds): Problem[] {
  const ids = known.get(kind);
  if (ids === undefined || ids.has(id)) return [];
  const other = otherKind(id, kind, known);
  const problem = problemAt(
    place,
    'id/unknown',
    `unknown ${SINGULAR[kind] ?? kind} "${id}"`,
    other ?? suggest(id, [...ids]) ?? whereToAdd(kind),
  );
  return [withMend(problem, id, other === undefined ? oneSlipFrom(id, ids) : undefined)];
}

/** What to do where the id is that of a row of another kind. */
function otherKind(id: string, kind: string, known: KnownIds): string | undefined {
  const rows: readonly string[] = rowKinds;
  const found = rowKinds.find((other) => known.get(other)?.has(id));
  if (found === undefined || !rows.includes(kind)) return undefined;
  return `"${id}" is in ${found}; name one of the ${kind}`;
}

function whereToAdd(kind: string): string {
  if (kind === 'work' || kind === 'people') return `add it to "${kind}" in project.yaml`;
  if (kind === 'donors') return 'name a source of kind donor';
  if (kind === 'parts-or-groups') return 'name a part, or a group of groups.yaml';
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
      .map((item) => ({ id: idOf(item), place: raw.placeOf(path) }));
  return Array.isArray(value)
    ? value.map((item, index) => ({
        id: idOf(String(item).trim()),
        place: raw.placeOf([...path, index]),
      }))
    : [];
}

/** The id of an item that may be a portion: `floor:2` names floor. */
function idOf(item: string): string {
  return item.replace(/[:=][\s\S]*$/, '');
}
