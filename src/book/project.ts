import { currencyOf } from '../check/money.ts';
import { costRow } from '../cost/costs.ts';
import type { CrossChecks } from '../measure/cross-check.ts';
import { measureAll } from '../measure/measure-all.ts';
import type { ReadProject } from '../read/content.ts';
import { type Day, earliestDay, latestDay } from '../time/day.ts';
import { deepFreeze } from './once.ts';
import type { Entry, Project, View } from './types.ts';
import { viewOf } from './view.ts';

/** Makes a project of the book from what was read, or undefined when its project file is not usable. */
export function makeProject(
  read: ReadProject,
  { drafts, checks = new Map() }: { drafts: boolean; checks?: CrossChecks },
): Project | undefined {
  if (read.info === undefined) return undefined;
  const info = read.info.value;
  const valuesOf = <Value>(list: readonly { readonly value: Value }[]) =>
    list.map(({ value }) => value);
  const currency = currencyOf(read) ?? 'XXX';
  const measured = measureAll({
    specs: valuesOf(read.lists.specs),
    instruments: valuesOf(read.lists.instruments),
    readings: byDate(valuesOf(read.lists.readings)),
    checks,
  });
  const rates = byDate(valuesOf(read.lists.rates));
  const firstPerson = info.people[0]?.id ?? '';

  const parts = {
    id: read.id,
    info,
    currency,
    sources: valuesOf(read.lists.sources),
    phases: valuesOf(read.lists.phases),
    specs: measured.specs,
    instruments: measured.instruments,
    parts: valuesOf(read.lists.parts),
    hours: byDate(valuesOf(read.lists.hours)).map((row) => ({
      ...row,
      who: row.who ?? firstPerson,
    })),
    costs: byDate(valuesOf(read.lists.costs)).flatMap(
      (record) => costRow(record, { currency, tools: info.rules.tools, rates }) ?? [],
    ),
    readings: measured.readings,
    rates,
    searches: byDate(valuesOf(read.lists.searches)),
    entries: makeEntries(read, drafts),
    photos: read.photos,
    photoRecords: valuesOf(read.lists.photos),
  };
  const days = daysOf(parts);
  const lastDay = latestDay(days) ?? ('1970-01-01' as Day);
  const views = new Map<Day, View>();

  const project: Project = {
    ...deepFreeze(parts),
    values: deepFreeze(measured.values),
    recipes: measured.recipes,
    firstDay: earliestDay(days) ?? lastDay,
    lastDay,
    asOf(day) {
      const view = views.get(day) ?? viewOf(project, day);
      views.set(day, view);
      return view;
    },
    get now() {
      return project.asOf(lastDay);
    },
  };
  return Object.freeze(project);
}

function makeEntries(read: ReadProject, drafts: boolean): Entry[] {
  return byDate(
    read.entries.map(({ value, slug, file, body }) => ({
      ...value,
      slug,
      file,
      components: body.components,
      words: body.words,
    })),
  )
    .filter(({ draft }) => drafts || !draft)
    .map((entry, index) => ({ ...entry, number: index + 1 }));
}

/** In order of date; rows of one day keep the order of their files. */
function byDate<Row extends { readonly date: Day }>(rows: readonly Row[]): Row[] {
  return [...rows].sort((a, b) => (a.date === b.date ? 0 : a.date < b.date ? -1 : 1));
}

type Dated = Pick<Project, 'hours' | 'costs' | 'readings' | 'searches' | 'entries' | 'parts'>;

function daysOf({ hours, costs, readings, searches, entries, parts }: Dated): Day[] {
  const steps = parts.flatMap(({ wanted, ordered, got, fitted, scrapped, sold }) => [
    wanted,
    ordered,
    got,
    fitted,
    scrapped,
    sold,
  ]);
  const rows = [hours, costs, searches, entries, readings.map(({ reading }) => reading)].flatMap(
    (list) => list.map(({ date }) => date),
  );
  return [...rows, ...steps.filter((day) => day !== undefined)];
}
