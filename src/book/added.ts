import type { CostRow } from '../cost/cost-row.ts';
import { sumCosts } from '../cost/costs.ts';
import { sumHours, type WorkedRow } from '../hours/hours.ts';
import { type Standing, standsOn } from '../ledger/standing.ts';
import { type Money, negate } from '../money/money.ts';
import type { Day } from '../time/day.ts';
import type { Minutes } from '../time/duration.ts';
import type { Words } from '../words/words.ts';
import type { Figure, FigureRow } from './figure.ts';
import { oncePer } from './once.ts';
import type { Entry, Project, View } from './types.ts';

/** What happened since the entry before, and the counts up to the entry's own day. */
export interface Added {
  readonly hours: Figure<Minutes, WorkedRow>;
  readonly costs: Figure<Money, CostRow>;
  readonly fitted: Figure<number>;
  readonly allFitted: Figure<number>;
  readonly readings: Figure<number>;
  readonly allReadings: Figure<number>;
}

type RowWords = Words['log']['rows'];

/**
 * What an entry adds: rows that count on its day and did not on the day of the entry before, less those that were replaced since.
 * So the running totals of two entries differ by it. Of two entries on one day, the first has the day's rows.
 */
export function addedSince(view: View, entry: Entry, words: Words): Added {
  const { project, day } = view;
  const before = project.entries[entry.number - 2]?.date;
  const stretch = { before, day };
  const { rows } = words.log;
  const fitted = fittedOn(view);
  const readings = readingsOn(project, day);
  const fittedBefore = before === undefined ? [] : fittedOn(project.asOf(before));
  const readBefore = before === undefined ? [] : readingsOn(project, before);
  return {
    hours: sumHours(
      changes(project.hours, stretch, rows, (row) => ({ ...row, hours: -row.hours })),
    ),
    costs: sumCosts(
      changes(project.costs, stretch, rows, (row) => ({ ...row, counted: negate(row.counted) })),
      project.currency,
    ),
    fitted: change(fitted, fittedBefore, rows, rows.fitted),
    allFitted: change(fitted, [], rows, rows.fittedSoFar),
    readings: change(readings, readBefore, rows, rows.read),
    allReadings: change(readings, [], rows, rows.readSoFar),
  };
}

/** Parts that were fitted by the view's day, in order of that. */
function fittedOn({ parts, day }: View): FigureRow[] {
  return parts
    .flatMap(({ part: { id, name, fitted } }) =>
      fitted !== undefined && fitted <= day ? [{ id, date: fitted, what: name }] : [],
    )
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}

function readingsOn(project: Project, day: Day): FigureRow[] {
  return readingRows(project).flatMap(({ reading, row }) => (standsOn(reading, day) ? [row] : []));
}

/** The readings as rows of a figure: one of each for all entries, since an old log has thousands. */
const readingRows = oncePer((project: Project) => {
  const names = new Map(project.specs.map(({ id, name }) => [id, name]));
  return project.readings.map(({ reading }) => {
    const { id, date, spec } = reading;
    return { reading, row: { id, date, what: names.get(spec) ?? spec } };
  });
});

/** Rows that began to count between two days, and those that ceased to, taken back. */
function changes<Row extends FigureRow & Standing>(
  rows: readonly Row[],
  { before, day }: { readonly before: Day | undefined; readonly day: Day },
  words: RowWords,
  takeBack: (row: Row) => Row,
): Row[] {
  const stood = (row: Row) => before !== undefined && standsOn(row, before);
  return rows.flatMap((row) => {
    const stands = standsOn(row, day);
    if (stands === stood(row)) return [];
    return stands ? [row] : [{ ...takeBack(row), what: words.takenBack(row.what) }];
  });
}

/** How many more there are now than before: the new ones, less those that no longer count. */
function change(
  now: readonly FigureRow[],
  before: readonly FigureRow[],
  words: RowWords,
  count: (fresh: number) => string,
): Figure<number> {
  const without = (rows: readonly FigureRow[], others: readonly FigureRow[]) => {
    const ids = new Set(others.map(({ id }) => id));
    return rows.filter(({ id }) => !ids.has(id));
  };
  const fresh = without(now, before);
  const gone = without(before, now);
  const added = count(fresh.length);
  return {
    value: fresh.length - gone.length,
    rows: [...fresh, ...gone.map((row) => ({ ...row, what: words.takenBack(row.what) }))],
    how: gone.length === 0 ? added : words.less(added, gone.length),
  };
}
