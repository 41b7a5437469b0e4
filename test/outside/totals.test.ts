import { readFileSync } from 'node:fs';
import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { addedSince } from '../../src/book/added.ts';
import type { Breakdown } from '../../src/book/figure.ts';
import { openBook } from '../../src/book/open.ts';
import type { Money } from '../../src/money/money.ts';
import { wordsOf } from '../../src/words/words.ts';
import {
  byPhase,
  cell,
  centsOf,
  contentDir,
  countingRows,
  isWithheld,
  listIn,
  minutesOf,
  type Row,
  rowsOf,
  stateOf,
  sumBy,
} from './raw-ledger.ts';

const book = await openBook(contentDir, { now: new Date('2026-12-31T12:00:00Z') });

const moneyIn = ({ groups }: Breakdown<Money>) =>
  Object.fromEntries(groups.map(({ key, figure }) => [key, figure.value.minor]));
const minutesIn = ({ groups }: Breakdown<number>) =>
  Object.fromEntries(groups.map(({ key, figure }) => [key, figure.value]));
const by = (name: string, otherwise: string) => (row: Row) => cell(row, name) || otherwise;

describe.each(['lapwing', 'ostermoor'])('the figures of %s, worked out a second way', (id) => {
  const project = book.project(id);
  if (project === undefined) throw new Error(`the demo has no project ${id}`);
  const { now } = project;
  const info = parse(readFileSync(`${contentDir}${id}/project.yaml`, 'utf8'));
  const rates = rowsOf(id, 'rates');
  const cents = (row: Row) => centsOf(row, info.currency, rates);
  const isValue = (row: Row) => ['gift', 'trade'].includes(cell(row, 'kind'));
  const counts = (row: Row) =>
    (info.rules?.tools !== 'out' || cell(row, 'category') !== 'tool') && !isValue(row);
  const costsOn = (day: string) => countingRows(id, 'costs', day).filter(counts);
  const hoursOn = (day: string) => countingRows(id, 'hours', day);
  const costs = costsOn(project.lastDay);
  const hours = hoursOn(project.lastDay);
  const borne = costs.flatMap((row) => byPhase(row, cents(row)));
  const parts = rowsOf(id, 'parts');
  const readings = rowsOf(id, 'readings');

  test('money: overall, by category, phase and source', () => {
    const overall = sumBy(costs, () => 'all', cents);
    expect({ all: now.costsByCategory.total.value.minor }).toEqual(overall);
    expect({ all: now.costsByPhase.total.value.minor }).toEqual(overall);
    expect({ all: now.costsBySource.total.value.minor }).toEqual(overall);
    expect(now.costsByCategory.total.value.currency).toBe(info.currency);

    expect(moneyIn(now.costsByCategory)).toEqual(sumBy(costs, by('category', ''), cents));
    const phases = sumBy(
      borne,
      ({ phase }) => phase,
      (share) => share.cents,
    );
    const source = (row: Row) => (isWithheld(row) ? 'none' : by('source', 'none')(row));
    expect(moneyIn(now.costsByPhase)).toEqual(phases);
    expect(moneyIn(now.costsBySource)).toEqual(sumBy(costs, source, cents));
  });

  test('hours: overall, by phase, work and person', () => {
    const first = info.people[0].id;
    const overall = sumBy(hours, () => 'all', minutesOf);
    expect({ all: now.hoursByPhase.total.value }).toEqual(overall);
    expect(minutesIn(now.hoursByPhase)).toEqual(sumBy(hours, by('phase', ''), minutesOf));
    expect(minutesIn(now.hoursByWork)).toEqual(sumBy(hours, by('work', ''), minutesOf));
    expect(minutesIn(now.hoursByPerson)).toEqual(sumBy(hours, by('who', first), minutesOf));
  });

  test('hours of each phase against its plan, and days late', () => {
    const worked = sumBy(hours, by('phase', ''), minutesOf);
    for (const row of rowsOf(id, 'phases')) {
      const figures = now.phases.find(({ phase }) => phase.id === row.id);
      const planned = minutesOf({ hours: cell(row, 'planned-hours') });
      expect(figures?.over).toBe((worked[cell(row, 'id')] ?? 0) - planned);
      const finished = cell(row, 'finished');
      if (finished === '') continue;
      const days = (Date.parse(finished) - Date.parse(cell(row, 'planned-finish'))) / 86_400_000;
      expect(figures?.late).toBe(days);
    }
  });

  test('parts: by source and by state', () => {
    const sizes = (groups: ReadonlyMap<string, readonly unknown[]>) =>
      Object.fromEntries([...groups].map(([key, group]) => [key, group.length]));
    const states = sumBy(parts, (row) => stateOf(row).replace('got', 'in-hand'));
    expect(sizes(now.partsBySource)).toEqual(sumBy(parts, by('source', '')));
    expect(sizes(now.partsByState)).toEqual(states);
  });

  test('readings: the mean of every one of them', () => {
    const specs = new Map(rowsOf(id, 'specs').map((row) => [cell(row, 'id'), cell(row, 'unit')]));
    expect(project.readings).toHaveLength(readings.length);
    for (const row of readings) {
      // The demo reads everything in the unit of its spec, so that no conversion stands in between.
      expect(cell(row, 'unit')).toBe(specs.get(cell(row, 'spec')));
      const left = new Set(listIn(row, 'excluded').map(Number));
      const values = listIn(row, 'values')
        .filter((_, index) => !left.has(index + 1))
        .map((text) => new Decimal(text));
      const mean = Decimal.sum(...values).div(values.length);
      const ours = project.readings.find(({ reading }) => reading.id === row.id)?.value;
      expect(
        mean
          .minus(ours ?? Number.NaN)
          .abs()
          .toNumber(),
      ).toBeLessThan(1e-12);
    }
  });

  test('running totals at every entry, and what each entry added', () => {
    let before = '';
    let [moneyBefore, minutesBefore] = [0, 0];
    for (const entry of project.entries) {
      const view = project.asOf(entry.date);
      const upTo = (row: Row) => cell(row, 'date') <= entry.date;
      const isNew = (row: Row) => upTo(row) && cell(row, 'date') > before;
      const tally = addedSince(view, entry, wordsOf('en'));
      const sum = (rows: readonly Row[], size: (row: Row) => number | Decimal) =>
        sumBy(rows, () => 'all', size).all ?? 0;

      // Withheld amounts count on the newest day only, so that no difference gives one away.
      const shown = (row: Row) => !isWithheld(row) || entry.date === project.lastDay;
      const money = sum(costsOn(entry.date).filter(shown), cents);
      const minutes = sum(hoursOn(entry.date), minutesOf);
      expect(view.costsByCategory.total.value.minor).toBe(money);
      expect(view.hoursByPhase.total.value).toBe(minutes);
      expect(tally.costs.value.minor).toBe(money - moneyBefore);
      expect(tally.hours.value).toBe(minutes - minutesBefore);
      [moneyBefore, minutesBefore] = [money, minutes];
      expect(tally.readings.value).toBe(readings.filter(isNew).length);
      expect(tally.allReadings.value).toBe(readings.filter(upTo).length);
      const fitted = parts.map((row) => cell(row, 'fitted')).filter(Boolean);
      expect(tally.allFitted.value).toBe(fitted.filter((day) => day <= entry.date).length);
      before = entry.date;
    }
  });

  test('a row a hundredth dearer, or a minute longer, would be seen', () => {
    const dearer = costs.map((row, index) => (index === 0 ? cents(row).plus(1) : cents(row)));
    expect(now.costsByCategory.total.value.minor).toBe(Decimal.sum(...dearer).toNumber() - 1);
    const longer = hours.map((row, index) => minutesOf(row) + (index === 0 ? 1 : 0));
    expect(now.hoursByPhase.total.value).toBe(longer.reduce((sum, size) => sum + size, 0) - 1);
  });
});
