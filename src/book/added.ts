import { type CostRow, sumCosts } from '../cost/costs.ts';
import { sumHours, type WorkedRow } from '../hours/hours.ts';
import type { Money } from '../money/money.ts';
import type { Day } from '../time/day.ts';
import type { Minutes } from '../time/duration.ts';
import type { Figure } from './figure.ts';
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
 * Rows dated after the entry before, up to and with the entry's day: that is what an entry adds.
 * Of two entries on one day, the first has the day's rows.
 */
export function addedSince(view: View, entry: Entry): Added {
  const { project } = view;
  const before = project.entries[entry.number - 2]?.date;
  const isNew = (date: Day) => (before === undefined || date > before) && date <= entry.date;

  const fitted = project.parts
    .flatMap((part) =>
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
    hours: sumHours(view.hours.filter(({ date }) => isNew(date))),
    costs: sumCosts(
      view.costs.filter(({ date }) => isNew(date)),
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

function count(rows: Figure<number>['rows'], noun: string, after: string): Figure<number> {
  const how = `${rows.length} ${noun}${rows.length === 1 ? '' : 's'} ${after}`.trim();
  return { value: rows.length, rows, how };
}
