import type { Reading } from '../model/kinds.ts';
import type { ReadEntry, ReadProject } from '../read/content.ts';
import type { UsedComponent } from '../read/mdx.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Day } from '../time/day.ts';
import { valuesOfProject } from './project-values.ts';
import type { Rule } from './rule.ts';

/** A value that an entry shows has been read, or worked out, by the entry's day: `Spec` needs a reading, `Change` one before and one after. */
export const shownValuesAreMeasured: Rule = ({ project }) => {
  if (isUnread(project)) return [];
  return project.entries.flatMap((entry) =>
    entry.body.components.flatMap((component) => unmeasured(component, entry, project)),
  );
};

const SHOWS_A_VALUE = new Set(['Spec', 'Working', 'Change']);

function unmeasured(component: UsedComponent, entry: ReadEntry, project: ReadProject): Problem[] {
  const prop = component.props.find(({ name }) => name === 'of');
  if (prop === undefined || !SHOWS_A_VALUE.has(component.name)) return [];
  if (component.name !== 'Change' && Array.isArray(prop.literal)) return [];
  const wanted = component.props.find(({ name }) => name === 'state')?.literal;
  return [prop.literal].flat().flatMap((id): Problem[] => {
    if (typeof id !== 'string' || !isSpec(id, project)) return [];
    const workedOut = workedOutStates(id, entry.value.date, project);
    const states = workedOut ?? readStates(id, entry.value.date, project);
    const lacking = component.name === 'Change' ? lacksChange(states) : lacksValue(states, wanted);
    if (lacking === undefined || hasMistake(id, project)) return [];
    const what = workedOut ? lacking.replace('reading', 'worked-out value') : lacking;
    return [
      problemAt(
        prop,
        'component/no-reading',
        `<${component.name}> of "${id}": there is no ${what} on or before ${entry.value.date}`,
        workedOut
          ? 'add the readings that it is worked out of to ledger/readings, or take the component out'
          : 'add the reading to ledger/readings, or take the component out',
      ),
    ];
  });
}

/** Whether a spec has a value by a day; one that is not there, or can't be worked out, is a problem of its own. */
export function hasValueOn(id: string, day: Day, project: ReadProject): boolean {
  if (!isSpec(id, project)) return true;
  if (isUnread(project) || hasMistake(id, project)) return true;
  return (workedOutStates(id, day, project) ?? readStates(id, day, project)).length > 0;
}

function isUnread({ lost }: ReadProject): boolean {
  return lost.kinds.has('readings') || (lost.ids.get('readings')?.length ?? 0) > 0;
}

/** Specs and readings as entries ask for them. */
interface LookedUp {
  readonly specs: ReadonlySet<string>;
  readonly readings: ReadonlyMap<string, readonly Reading[]>;
}

const kept = new WeakMap<ReadProject, LookedUp>();

/** Looked up once for the thousands of values that a log shows. */
function lookedUp(project: ReadProject): LookedUp {
  const found = kept.get(project) ?? lookUp(project);
  kept.set(project, found);
  return found;
}

function lookUp({ lists }: ReadProject): LookedUp {
  const readings = lists.readings.map(({ value }) => value);
  return {
    specs: new Set(lists.specs.map(({ value }) => value.id)),
    readings: Map.groupBy(readings, ({ spec }) => spec),
  };
}

function isSpec(id: string, project: ReadProject): boolean {
  return lookedUp(project).specs.has(id);
}

function readStates(id: string, day: Day, project: ReadProject): string[] {
  const readings = lookedUp(project).readings.get(id) ?? [];
  return readings.filter(({ date }) => date <= day).map(({ state }) => state);
}

/** States of the values that a derived spec has by a day; undefined for one that is read. */
function workedOutStates(id: string, day: Day, project: ReadProject): string[] | undefined {
  const { recipes, on } = valuesOfProject(project);
  if (!recipes.has(id)) return undefined;
  return (on(day).get(id) ?? []).filter(({ date }) => date <= day).map(({ state }) => state);
}

/** A derived spec that can't be worked out is a problem of its own. */
function hasMistake(id: string, project: ReadProject): boolean {
  const { mistakes, impossible } = valuesOfProject(project);
  return mistakes.has(id) || impossible.some(({ spec }) => spec === id);
}

function lacksValue(states: readonly string[], wanted: unknown): string | undefined {
  if (states.length === 0) return 'reading';
  return typeof wanted === 'string' && !states.includes(wanted)
    ? `reading with the state "${wanted}"`
    : undefined;
}

function lacksChange(states: readonly string[]): string | undefined {
  if (!states.some((state) => state === 'as-found' || state === 'before'))
    return 'reading from before the work';
  return states.some((state) => state === 'after' || state === 'final')
    ? undefined
    : 'reading from after the work';
}
