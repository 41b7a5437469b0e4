import { correctionsOf, standingsOf } from '../ledger/corrections.ts';
import { type KnownValues, knownValues } from '../measure/known-values.ts';
import type { ReadProject } from '../read/content.ts';

const known = new WeakMap<ReadProject, KnownValues>();

/** Every value of a project as the book has it, and what stood in the way; worked out once for all rules that ask. */
export function valuesOfProject(project: ReadProject): KnownValues {
  const values = known.get(project) ?? workOut(project);
  known.set(project, values);
  return values;
}

function workOut({ lists }: ReadProject): KnownValues {
  const standingOf = standingsOf(correctionsOf(lists));
  return knownValues({
    specs: lists.specs.map(({ value }) => value),
    instruments: lists.instruments.map(({ value }) => value),
    readings: lists.readings
      .map(({ value }) => ({ ...value, ...standingOf(value.id) }))
      .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0)),
    checks: new Map(),
  });
}
