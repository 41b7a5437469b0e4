import { currencyOf } from '../check/money.ts';
import { costRows } from '../cost/cost-row.ts';
import { correctionsOf, firstIds, standingsOf } from '../ledger/corrections.ts';
import { stillStands } from '../ledger/standing.ts';
import { gatherWithheld, published, WITHHELD, withholds } from '../ledger/withheld.ts';
import { type LedgerMarks, marksOf } from '../mark/ledger-marks.ts';
import type { CrossChecks } from '../measure/cross-check.ts';
import { knownValues } from '../measure/known-values.ts';
import type { ReadProject } from '../read/content.ts';
import { heldPhotos } from '../read/held-photos.ts';
import { type Day, earliestDay, latestDay } from '../time/day.ts';
import { decisionsOf } from './decisions.ts';
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
  const held = heldPhotos(read);
  const corrections = correctionsOf(read.lists);
  const standingOf = standingsOf(corrections);
  const firstId = firstIds(corrections);
  const standing = <Row extends { readonly id: string }>(
    rows: readonly { readonly value: Row }[],
  ) => rows.map(({ value }) => ({ ...value, ...standingOf(value.id) }));

  const measured = knownValues({
    specs: valuesOf(read.lists.specs),
    instruments: valuesOf(read.lists.instruments),
    readings: byDate(standing(read.lists.readings)).map(published),
    checks,
  });
  // Of two rates of one day the last by id counts, whatever the order of rows and files.
  const rates = byDate(standing(read.lists.rates).sort((a, b) => (a.id < b.id ? -1 : 1)));
  const partRows = standing(read.lists.parts).map((row) => ({
    ...row,
    rowId: row.id,
    id: firstId(row.id),
  }));
  const firstPerson = info.people[0]?.id ?? '';

  const parts = {
    id: read.id,
    info,
    currency,
    sources: valuesOf(read.lists.sources),
    phases: valuesOf(read.lists.phases),
    specs: measured.specs,
    instruments: measured.instruments,
    parts: partRows.filter(stillStands),
    partRows,
    hours: byDate(standing(read.lists.hours)).map((row) => ({
      ...published({ ...row, who: row.who ?? firstPerson }),
      who: withholds(row, 'who') ? WITHHELD : (row.who ?? firstPerson),
    })),
    costs: byDate(valuesOf(read.lists.costs)).flatMap((record) =>
      costRows(record, {
        currency,
        rules: info.rules,
        rates,
        standing: standingOf(record.id),
      }).map((row) => ({
        ...row,
        order: row.order && firstId(row.order),
        parts: row.parts.map((share) => ({ ...share, id: firstId(share.id) })),
      })),
    ),
    readings: measured.readings,
    rates,
    searches: byDate(standing(read.lists.searches)).map((row) => ({
      ...published(row),
      part: firstId(row.part),
    })),
    orders: byDate(standing(read.lists.orders)).map((row) => ({
      ...row,
      rowId: row.id,
      id: firstId(row.id),
      parts: row.parts?.map(firstId),
    })),
    budgets: byDate(standing(read.lists.budgets)),
    corrections,
    ...decisionsOf(read.lists, corrections),
    entries: makeEntries(read, drafts),
    photos: read.photos.filter((file) => !held.has(file)),
    photoRecords: valuesOf(read.lists.photos),
  };
  const days = [...daysOf(parts), ...corrections.map(({ on }) => on)];
  const lastDay = latestDay(days) ?? ('1970-01-01' as Day);
  const views = new Map<Day, View>();

  const project: Project = {
    ...deepFreeze({ ...parts, costs: gatherWithheld(parts.costs, lastDay).map(published) }),
    values: deepFreeze(measured.values),
    valuesKnownOn: measured.on,
    recipes: measured.recipes,
    // Not frozen through and through: the bytes of a hash can't be.
    marks: soundMarks(read),
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

/** The marks of a project that has any; broken ones are a problem of the check, and are not published. */
function soundMarks(read: ReadProject): LedgerMarks | undefined {
  const marks = marksOf(read);
  return 'problems' in marks || marks.marks.length === 0 ? undefined : marks;
}

function makeEntries(read: ReadProject, drafts: boolean): Entry[] {
  return byDate(
    read.entries.map(({ value, slug, file, body }) => ({
      ...value,
      slug,
      file,
      components: body.components,
      links: body.links.map(({ url }) => url),
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

type Dated = Pick<
  Project,
  | 'hours'
  | 'costs'
  | 'orders'
  | 'budgets'
  | 'readings'
  | 'searches'
  | 'entries'
  | 'parts'
  | 'corrections'
  | 'findings'
  | 'candidates'
  | 'choices'
  | 'preparations'
  | 'waits'
>;

/** Every day on which something happened or was said. */
function daysOf(project: Dated): Day[] {
  const { hours, costs, orders, budgets, searches, entries } = project;
  const { findings, candidates, choices, preparations, waits } = project;
  const readings = project.readings.map(({ reading }) => reading);
  const rows = [
    hours,
    costs,
    orders,
    budgets,
    searches,
    entries,
    readings,
    findings,
    candidates,
    choices,
    preparations,
    waits,
  ];
  const steps = project.parts.flatMap(
    ({ wanted, ordered, got, fitted, scrapped, sold, forSale }) => [
      wanted,
      ordered,
      got,
      fitted,
      scrapped,
      sold,
      forSale,
    ],
  );
  const ends = [...preparations.map(({ back }) => back), ...waits.map(({ ended }) => ended)];
  const said = project.corrections.map(({ on }) => on);
  return [
    ...rows.flatMap((list) => list.map(({ date }) => date)),
    ...steps,
    ...ends,
    ...said,
  ].filter((day) => day !== undefined);
}
