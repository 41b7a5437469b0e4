import { categoryName } from '../cost/category-name.ts';
import { costsBy, costsByShare } from '../cost/costs.ts';
import { hoursBy } from '../hours/hours.ts';
import { type Standing, standsOn } from '../ledger/standing.ts';
import { WITHHELD } from '../ledger/withheld.ts';
import { type SpecFigures, specFigures } from '../measure/spec-figures.ts';
import { partStates } from '../model/components.ts';
import { costCategories } from '../model/cost-rows.ts';
import { isKnownOn, lastStepOn, type PartState, stateOn } from '../parts/state.ts';
import { phaseFigures } from '../plan/phases.ts';
import type { Day } from '../time/day.ts';
import type { Said } from '../words/said.ts';
import { deepFreeze, once } from './once.ts';
import type { PartOnDay, Project, View } from './types.ts';

/** A project as it stood at the end of a day. Figures are worked out when first asked for, then kept. */
export function viewOf(project: Project, day: Day): View {
  const upTo = <Row extends Standing & { readonly date: Day }>(rows: readonly Row[]) =>
    rows.filter((row) => standsOn(row, day));
  const hours = upTo(project.hours);
  const costs = upTo(project.costs);
  const parts = project.partRows
    .filter((part) => standsOn(part, day) && isKnownOn(part, day))
    .map((part) => ({ part, state: stateOn(part, day), since: lastStepOn(part, day) }));
  const byPhase = {
    nameOf: nameIn(project.phases, 'phase'),
    order: project.phases.map(({ id }) => id),
  };

  const lazy = {
    phases: once(() => project.phases.map((phase) => phaseFigures(phase, hours, day))),
    hoursByPhase: once(() => hoursBy(hours, { ...byPhase, keyOf: (row) => row.phase })),
    hoursByWork: once(() =>
      hoursBy(hours, {
        keyOf: (row) => row.work,
        nameOf: (id) => id.replaceAll('-', ' '),
        order: project.info.work,
      }),
    ),
    hoursByPerson: once(() =>
      hoursBy(hours, {
        keyOf: (row) => row.who,
        nameOf: (id) => personName(project, id),
        order: project.info.people.map(({ id }) => id),
      }),
    ),
    costsByCategory: once(() =>
      costsBy(costs, project.currency, {
        keyOf: (row) => row.category,
        nameOf: categoryName,
        order: costCategories,
      }),
    ),
    costsByPhase: once(() =>
      costsByShare(costs, project.currency, { ...byPhase, sharesIn: ({ phases }) => phases }),
    ),
    costsBySource: once(() =>
      costsBy(costs, project.currency, {
        keyOf: (row) => row.source ?? 'none',
        nameOf: nameIn(project.sources, 'source'),
        order: project.sources.map(({ id }) => id),
      }),
    ),
    partsByState: once(
      () =>
        groupParts(parts, partStates, ({ state }) => state) as ReadonlyMap<
          PartState,
          readonly PartOnDay[]
        >,
    ),
    partsBySource: once(() =>
      groupParts(
        parts,
        project.sources.map(({ id }) => id),
        ({ part }) => part.source,
      ),
    ),
    specs: once(() => project.specs.flatMap(({ id }) => spec(id) ?? [])),
  };
  // One by one: an entry shows three of the hundreds that a large project has.
  const specs = new Map(project.specs.map((one) => [one.id, one]));
  const figures = new Map<string, SpecFigures>();
  const spec = (id: string): SpecFigures | undefined => {
    const one = specs.get(id);
    const found = figures.get(id);
    if (one === undefined || found) return found;
    const values = project.valuesKnownOn(day).get(id) ?? [];
    const made = deepFreeze(specFigures(one, values, day));
    figures.set(id, made);
    return made;
  };

  return Object.freeze({
    project,
    day,
    hours: Object.freeze(hours),
    costs: Object.freeze(costs),
    searches: Object.freeze(upTo(project.searches)),
    parts: deepFreeze(parts),
    get phases() {
      return lazy.phases();
    },
    get hoursByPhase() {
      return lazy.hoursByPhase();
    },
    get hoursByWork() {
      return lazy.hoursByWork();
    },
    get hoursByPerson() {
      return lazy.hoursByPerson();
    },
    get costsByCategory() {
      return lazy.costsByCategory();
    },
    get costsByPhase() {
      return lazy.costsByPhase();
    },
    get costsBySource() {
      return lazy.costsBySource();
    },
    get partsByState() {
      return lazy.partsByState();
    },
    get partsBySource() {
      return lazy.partsBySource();
    },
    get specs() {
      return lazy.specs();
    },
    spec,
  });
}

function nameIn(
  records: readonly { readonly id: string; readonly name: string }[],
  noun: 'phase' | 'source',
): (id: string) => Said {
  const names = new Map(records.map(({ id, name }) => [id, name]));
  return (id) => names.get(id) ?? (({ money }) => money.notTied[noun]);
}

/** A person's public name; whoever has none is a helper, and whoever is withheld has no name at all. */
export function personName(project: Project, id: string): Said {
  if (id === WITHHELD) return ({ marks }) => marks.withheld;
  const name = project.info.people.find((person) => person.id === id)?.name;
  return name ?? (({ plan }) => plan.helper);
}

function groupParts(
  parts: readonly PartOnDay[],
  order: readonly string[],
  keyOf: (part: PartOnDay) => string,
): ReadonlyMap<string, readonly PartOnDay[]> {
  return new Map(
    order
      .map((key) => [key, parts.filter((part) => keyOf(part) === key)] as const)
      .filter(([, group]) => group.length > 0),
  );
}
