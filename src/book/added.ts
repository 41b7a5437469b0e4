import type { CostRow } from '../cost/cost-row.ts';
import { sumCosts } from '../cost/costs.ts';
import { sumHours, type WorkedRow } from '../hours/hours.ts';
import { type Standing, standsOn } from '../ledger/standing.ts';
import { type Money, negate } from '../money/money.ts';
import type { Day } from '../time/day.ts';
import type { Minutes } from '../time/duration.ts';
import type { Figure, FigureRow } from './figure.ts';
import type { Entry, View } from './types.ts';

/** What happened since the entry before, and the counts up to the entry's own day. */
export interface Added {
  readonly hours: Figure<Minutes, WorkedRow>;
  readonly costs: Figure<Money, CostRow>;
  readonly fitted: Figure<number>;
  readonly allFitted: Figure<number>;
  readonly readings: Figure<number>;
  readonly allReadings: Figure<number>;
}

/**
 * What an entry adds: rows that count on its day and did not on the day of the entry before, less those that were replaced since.
 * So the running totals of two entries differ by it. Of two entries on one day, the first has the day's rows.
 */
export function addedSince(view: View, entry: Entry): Added {
  const { project } = view;
  const before = project.entries[entry.number - 2]?.date;
  const isNew = (date: Day) => (before === undefined || date > before) && date <= entry.date;

  const fitted = view.parts
    .flatMap(({ part }) =>
      part.fitted !== undefined && part.fitted <= view.day
        ? [{ id: part.id, date: part.fitted, what: part.name }]
        : [],
    )
    .sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  const names = new Map(project.specs.map(({ id, name }) => [id, name]));
  const readings = project.readings.flatMap(({ reading }) =>
    reading.date <= view.day
      ? [{ id: reading.id, date: reading.date, what: names.get(reading.spec) ?? reading.spec }]
      : [],
  );
  return {
    hours: sumHours(
      changes(project.hours, { before, day: view.day }, (row) => ({ ...row, hours: -row.hours })),
    ),
    costs: sumCosts(
      changes(project.costs, { before, day: view.day }, (row) => ({
        ...row,
        counted: negate(row.counted),
      })),
      project.currency,
    ),
    fitted: count(
      fitted.filter(({ date }) => isNew(date)),
      'part',
      'fitted',
    ),
    allFitted: count(fitted, 'part', 'fitted so far'),
    readings: count(
      readings.filter(({ date }) => isNew(date)),
      'reading',
      '',
    ),
    allReadings: count(readings, 'reading', 'so far'),
  };
}

/** Rows that began to count between two days, and those that ceased to, taken back. */
function changes<Row extends FigureRow & Standing>(
  rows: readonly Row[],
  { before, day }: { readonly before: Day | undefined; readonly day: Day },
  takeBack: (row: Row) => Row,
): Row[] {
  const stood = (row: Row) => before !== undefined && standsOn(row, before);
  return rows.flatMap((row) => {
    const stands = standsOn(row, day);
    if (stands === stood(row)) return [];
    return stands ? [row] : [{ ...takeBack(row), what: `Taken back: ${row.what}` }];
  });
}

function count(rows: Figure<number>['rows'], noun: string, after: string): Figure<number> {
  const how = `${rows.length} ${noun}${rows.length === 1 ? '' : 's'} ${after}`.trim();
  return { value: rows.length, rows, how };
}
