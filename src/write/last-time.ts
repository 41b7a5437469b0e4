import type { z } from 'zod';
import { factsOf, refOf } from '../model/facts.ts';
import type { ListKind } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import type { RawValue } from '../read/raw.ts';
import type { Fields } from './csv-append.ts';
import { requiredFields, shapeOf } from './kind-fields.ts';

/** What a row is about and what came of it: a row that is written unseen never has these from another. */
const OWN = new Set(['spec', 'part', 'row', 'result', 'found']);

/** How many rows back a habit is looked for. */
const RECENT = 10;

/**
 * The row to go on from: the newest one that has most in common with what is given already, so that a reading of a spec goes on from
 * the last of that spec, with its unit and instrument.
 */
export function lastTime(project: ReadProject, kind: ListKind, given: Fields): Fields {
  const shape = shapeOf(kind);
  const names = carried(kind).filter((name) => refOf(shape[name] as z.ZodType) !== undefined);
  let best: { fields: Fields; likeness: number; date: string } | undefined;
  for (const { raw } of project.lists[kind]) {
    const fields = textsOf(raw.value);
    const likeness = names.filter((name) => given[name] && given[name] === fields[name]);
    const date = fields.date ?? '';
    if (
      best &&
      (likeness.length < best.likeness || (likeness.length === best.likeness && date < best.date))
    )
      continue;
    best = { fields, likeness: likeness.length, date };
  }
  return best?.fields ?? {};
}

/** What a row takes over from the last by itself: ids, words and units that it needs. Never what was done, measured or paid. */
export function takenOver(
  kind: ListKind,
  given: Fields,
  last: Fields,
  needed: readonly string[] = requiredFields(kind),
): Fields {
  return Object.fromEntries(
    needed
      .filter((name) => carried(kind).includes(name) && !OWN.has(name))
      .filter((name) => !given[name] && last[name])
      .map((name) => [name, last[name] ?? '']),
  );
}

/** Fields that go on from row to row. */
export function carried(kind: ListKind): string[] {
  return Object.entries(shapeOf(kind)).flatMap(([name, schema]) => {
    if (['id', 'corrects', 'withhold', 'together', 'excluded'].includes(name)) return [];
    const { reads, item } = factsOf(schema);
    const goesOn = refOf(schema) !== undefined || reads === 'word' || reads === 'unit';
    return goesOn && item === undefined ? [name] : [];
  });
}

/** Fields that a row need not have, and most of the latest rows do; before there is a row, its phase, without which few rows pass. */
export function usualFields(project: ReadProject, kind: ListKind): string[] {
  const recent = project.lists[kind].slice(-RECENT).map(({ raw }) => textsOf(raw.value));
  const required = requiredFields(kind);
  return Object.keys(shapeOf(kind)).filter(
    (name) =>
      !required.includes(name) &&
      name !== 'recorded' &&
      (recent.length === 0
        ? name === 'phase'
        : recent.filter((row) => row[name]).length * 2 > recent.length),
  );
}

/** A record's fields as text, several values with spaces between. */
function textsOf(value: RawValue): Fields {
  if (typeof value === 'string' || Array.isArray(value)) return {};
  return Object.fromEntries(
    Object.entries(value).flatMap(([name, inner]) => {
      if (typeof inner === 'string') return [[name, inner]];
      const isPlain = Array.isArray(inner) && inner.every((item) => typeof item === 'string');
      return isPlain ? [[name, inner.join(' ')]] : [];
    }),
  );
}
