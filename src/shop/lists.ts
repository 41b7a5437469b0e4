import { costCategories } from '../model/cost-rows.ts';
import { findingKinds } from '../model/survey-rows.ts';
import type { ReadContent, ReadProject } from '../read/content.ts';

/** What the page offers to choose from, as the files are now: names and ids, no rows. */
export function listsOf({ projects }: ReadContent) {
  return { projects: projects.flatMap((project) => listsOfProject(project) ?? []) };
}

function listsOfProject({ id, info, lists }: ReadProject) {
  if (info === undefined) return undefined;
  const { name, currency, work, people } = info.value;
  const surveys = lists.surveys.map(({ value }) => ({ id: value.id, name: value.name }));
  return {
    id,
    name,
    currency: currency ?? '',
    work,
    people: people.map((person) => ({ id: person.id, name: person.name ?? person.id })),
    phases: lists.phases.map(({ value }) => ({
      id: value.id,
      name: value.name,
      finished: value.finished !== undefined,
    })),
    specs: lists.specs.flatMap(({ value }) =>
      value.calc === undefined && value.formula === undefined
        ? [
            {
              id: value.id,
              name: value.name,
              unit: value.unit,
              quantity: value.quantity,
              last: lastReading(lists.readings, value.id),
            },
          ]
        : [],
    ),
    instruments: lists.instruments.map(({ value }) => ({
      id: value.id,
      name: value.name,
      quantity: value.quantity,
    })),
    parts: lists.parts.map(({ value }) => ({
      id: value.id,
      name: value.name,
      got: value.got !== undefined,
      fitted: value.fitted !== undefined,
    })),
    surveys,
    found: findingKinds,
    categories: costCategories,
  };
}

/** Instrument, state and unit of the newest reading of a spec: what the next one most likely has. */
function lastReading(readings: ReadProject['lists']['readings'], spec: string) {
  const last = readings
    .map(({ value }) => value)
    .filter((reading) => reading.spec === spec)
    .reduce<(typeof readings)[number]['value'] | undefined>(
      (newest, one) => (newest === undefined || one.date >= newest.date ? one : newest),
      undefined,
    );
  return last && { instrument: last.instrument, state: last.state, unit: last.unit };
}
