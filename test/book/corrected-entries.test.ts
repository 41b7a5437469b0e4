import { describe, expect, test } from 'vitest';
import { type Added, addedSince } from '../../src/book/added.ts';
import { effectOf } from '../../src/book/effect.ts';
import { rowLine } from '../../src/book/row-line.ts';
import { runningTotals } from '../../src/cost/costs.ts';
import { runningHours } from '../../src/hours/hours.ts';
import { toDecimal } from '../../src/money/money.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf, type Written } from './project-of.ts';

const entry = (title: string, date: string): Written => ({
  ...{ title, date, phase: 'strip', summary: 'Something was done.' },
});
const replaces = (corrects: string): Written => {
  return { corrects, recorded: '2025-03-10', because: 'It was wrong' };
};
const cost = (id: string, amount: string, rest: Written = {}): Written => ({
  ...{ id, date: '2025-03-01', amount, category: 'part', phase: 'strip', what: `Thing ${id}` },
  ...rest,
});
const hours = { phase: 'strip', work: 'cleaning', what: 'Cleaned' };
const reading = (id: string, values: string, rest: Written = {}): Written => ({
  ...{ id, date: '2025-03-01', spec: 'play', state: 'after', values },
  ...{ unit: 'mm', instrument: 'gauge', ...rest },
});
const part = { name: 'Gib', system: 'ram', source: 'new' };

const project = projectOf({
  lists: {
    costs: [
      cost('c-1', '100'),
      cost('c-2', '90', replaces('c-1')),
      cost('c-3', '7'),
      cost('c-4', '10.00 EUR'),
    ],
    rates: [
      { id: 'x-1', date: '2025-03-01', from: 'EUR', to: 'GBP', rate: '0.8', source: 'a bank' },
      {
        ...{ id: 'x-2', date: '2025-03-01', from: 'EUR', to: 'GBP', rate: '0.9', source: 'a bank' },
        ...replaces('x-1'),
      },
    ],
    hours: [
      { ...hours, id: 'h-1', date: '2025-03-01', hours: '5:00' },
      { ...hours, id: 'h-2', date: '2025-03-01', hours: '3:30', ...replaces('h-1') },
    ],
    parts: [
      { ...part, id: 'gib', fitted: '2025-03-01' },
      { ...part, id: 'gib-2', ...replaces('gib'), got: '2025-03-01' },
      { ...part, id: 'nut', name: 'Nut', got: '2025-03-01' },
      { ...part, id: 'nut-2', name: 'Nut', ...replaces('nut'), fitted: '2025-03-02' },
      { ...part, id: 'pin', name: 'Pin', fitted: '2025-03-03' },
    ],
    orders: [
      { ...cost('o-1', '40'), what: 'Bushes' },
      { ...cost('o-2', '45'), what: 'Bushes', ...replaces('o-1') },
    ],
    specs: [
      { id: 'play', name: 'Play', about: 'Play.', quantity: 'length', unit: 'mm', system: 'ram' },
    ],
    instruments: [{ id: 'gauge', name: 'Gauge', quantity: 'length' }],
    readings: [
      reading('r-1', '0.20'),
      reading('r-2', '0.30', replaces('r-1')),
      reading('r-3', '0.40', { date: '2025-03-09' }),
    ],
    withdrawals: [{ id: 'w-1', row: 'c-3', date: '2025-03-12', because: 'For another machine' }],
  },
  entries: [
    entry('First', '2025-03-05'),
    entry('Second', '2025-03-11'),
    entry('Third', '2025-03-12'),
  ],
});

const added = project.entries.map((item) =>
  addedSince(project.asOf(item.date), item, wordsOf('en')),
);
const values = (name: keyof Added) => added.map((item) => item[name].value);
const ids = (name: keyof Added, number: number) =>
  added[number - 1]?.[name].rows.map(({ id, what }) =>
    what.startsWith('Taken back') ? `-${id}` : id,
  );

describe('what an entry added after corrections', () => {
  test('is what the running totals of the two entries differ by', () => {
    const totals = project.entries.map((item) => project.asOf(item.date));
    expect(totals.map(({ costsByPhase }) => toDecimal(costsByPhase.total.value))).toEqual([
      ...['115.00', '106.00', '99.00'],
    ]);
    expect(added.map(({ costs }) => toDecimal(costs.value))).toEqual(['115.00', '-9.00', '-7.00']);
    expect(totals.map(({ hoursByPhase }) => hoursByPhase.total.value)).toEqual([300, 210, 210]);
    expect(values('hours')).toEqual([300, -90, 0]);
  });

  test('names what was taken back beside what came in its place', () => {
    expect(ids('costs', 2)).toEqual(['-c-1', 'c-2', '-c-4', 'c-4']);
    expect(ids('costs', 3)).toEqual(['-c-3']);
    expect(ids('hours', 2)).toEqual(['-h-1', 'h-2']);
  });

  test('counts a corrected reading once', () => {
    expect(values('readings')).toEqual([1, 1, 0]);
    expect(values('allReadings')).toEqual([1, 2, 2]);
    expect(ids('readings', 2)).toEqual(['r-2', 'r-3', '-r-1']);
    expect(added[1]?.readings.how).toBe('2 readings, less 1 taken back');
  });

  test('counts a part that is fitted by a correction, and takes back one that is not', () => {
    expect(values('allFitted')).toEqual([2, 2, 2]);
    expect(values('fitted')).toEqual([2, 0, 0]);
    expect(ids('fitted', 2)).toEqual(['nut', '-gib']);
  });
});

test('running totals pass over rows that no longer count', () => {
  expect(
    runningTotals(project.costs, 'GBP').map(({ row, total }) => [row.id, toDecimal(total)]),
  ).toEqual([
    ['c-1', '0.00'],
    ['c-2', '90.00'],
    ['c-3', '90.00'],
    ['c-4', '90.00'],
    ['c-4', '99.00'],
  ]);
  expect(runningHours(project.hours).map(({ total }) => total)).toEqual([0, 210]);
});

test('running totals of a day count what stood on it', () => {
  const view = project.asOf(project.entries[0]?.date ?? project.lastDay);
  const totals = runningTotals(view.costs, 'GBP', () => true).map(({ total }) => toDecimal(total));
  expect(totals).toEqual(['100.00', '107.00', '115.00']);
});

describe('a correction', () => {
  const effects = new Map(
    project.corrections.map((correction) => [correction.said, effectOf(project, correction)]),
  );
  const effect = (said: string) => {
    const { money, minutes } = effects.get(said) ?? {};
    return money ? toDecimal(money) : minutes;
  };

  test('has the effect on money or hours that it had', () => {
    expect(effect('c-2')).toBe('-10.00');
    expect(effect('w-1')).toBe('-7.00');
    expect(effect('h-2')).toBe(-90);
  });

  test('of a rate has the effect of all rows converted at it', () => {
    expect(effect('x-2')).toBe('1.00');
  });

  test('of anything else has none on totals', () => {
    expect(['r-2', 'gib-2', 'o-2'].map((said) => effects.get(said))).toEqual([{}, {}, {}]);
  });

  test('tells what each of the two rows says', () => {
    const line = (id: string) => rowLine(project, id, 'en-GB');
    expect(['c-1', 'c-2', 'h-1', 'r-1', 'x-2', 'gib', 'gib-2', 'o-1', 'o-2'].map(line)).toEqual([
      '£100.00, Thing c-1',
      '£90.00, Thing c-2',
      '5:00 h, Cleaned',
      'Play: 0.20 mm',
      '1 EUR = 0.9 GBP, a bank',
      'Gib, new, fitted 2025-03-01',
      'Gib, new, got 2025-03-01',
      '£40.00, Bushes',
      '£45.00, Bushes',
    ]);
  });

  test('and the row it replaces each have an address', () => {
    const to = addressesOf('https://shed.example/');
    expect(
      ['c-1', 'h-2', 'x-1', 'r-1', 'o-2', 'gib', 'gib-2', 'w-1'].map((id) => to.row(project, id)),
    ).toEqual([
      '/drill-press/costs/2025/#c-1',
      '/drill-press/hours/2025/#h-2',
      '/drill-press/costs/#x-1',
      '/drill-press/specs/play/#r-1',
      '/drill-press/budget/#o-1',
      '/drill-press/parts/gib/',
      '/drill-press/corrections/#gib-2',
      '/drill-press/corrections/#w-1',
    ]);
  });
});
