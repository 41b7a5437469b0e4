import { describe, expect, test } from 'vitest';
import { type Added, addedSince } from '../../src/book/added.ts';
import type { Day } from '../../src/time/day.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf, type Written } from './project-of.ts';

const hours = (id: string, date: string, length: string): Written => ({
  ...{ id, date, hours: length, phase: 'strip', work: 'cleaning', what: 'Cleaned' },
});
const entry = (title: string, date: string): Written => ({
  ...{ title, date, phase: 'strip', summary: 'Something was done.' },
});
const reading = (id: string, date: string): Written => ({
  ...{ id, date, spec: 'play', state: 'after', values: '0.2', unit: 'mm', instrument: 'gauge' },
});

const project = projectOf({
  lists: {
    hours: [
      hours('h-1', '2025-02-20', '1:00'),
      hours('h-2', '2025-03-01', '2:00'),
      hours('h-3', '2025-03-02', '4:00'),
      hours('h-4', '2025-03-08', '8:00'),
      hours('h-5', '2025-03-09', '16:00'),
    ],
    costs: [
      { id: 'c-1', date: '2025-03-01', amount: '10', category: 'part', phase: 'strip', what: 'A' },
      {
        id: 'c-2',
        date: '2025-03-08',
        amount: '2.50',
        category: 'part',
        phase: 'strip',
        what: 'B',
      },
    ],
    parts: [
      { id: 'seal', name: 'Seal', system: 'ram', source: 'new', fitted: '2025-03-08' },
      { id: 'gib', name: 'Gib', system: 'ram', source: 'new', fitted: '2025-03-01' },
      { id: 'nut', name: 'Nut', system: 'ram', source: 'new', fitted: '2025-04-01' },
      { id: 'pin', name: 'Pin', system: 'ram', source: 'new', got: '2025-03-01' },
    ],
    specs: [
      { id: 'play', name: 'Play', about: 'Play.', quantity: 'length', unit: 'mm', system: 'ram' },
    ],
    instruments: [{ id: 'gauge', name: 'Gauge', quantity: 'length' }],
    readings: [reading('r-1', '2025-03-01'), reading('r-2', '2025-03-02')],
  },
  entries: [
    entry('First', '2025-03-01'),
    entry('Second', '2025-03-08'),
    entry('Third', '2025-03-08'),
  ],
});

/** What the entry with a number added: ids of its rows. */
function added(number: number): Added {
  const found = project.entries[number - 1];
  if (found === undefined) throw new Error(`there is no entry ${number}`);
  return addedSince(project.asOf(found.date), found, wordsOf('en'));
}
const ids = ({ rows }: { rows: readonly { id: string }[] }) => rows.map(({ id }) => id);

describe('what an entry added', () => {
  test('is everything up to its day when it is the first', () => {
    expect(ids(added(1).hours)).toEqual(['h-1', 'h-2']);
    expect(added(1).hours.value).toBe(180);
    expect(ids(added(1).costs)).toEqual(['c-1']);
    expect(ids(added(1).readings)).toEqual(['r-1']);
  });

  test('is what is dated after the entry before, up to and with its own day', () => {
    expect(ids(added(2).hours)).toEqual(['h-3', 'h-4']);
    expect(added(2).costs.value).toEqual({ minor: 250, currency: 'GBP' });
    expect(ids(added(2).readings)).toEqual(['r-2']);
  });

  test('is nothing for a second entry of one day: the first has the day', () => {
    const { hours: worked, costs, fitted, readings } = added(3);
    expect([worked, costs, fitted, readings].map((figure) => figure.rows.length)).toEqual([
      0, 0, 0, 0,
    ]);
  });

  test('counts parts on the day they were fitted, in that order, and none that are not', () => {
    expect(ids(added(1).fitted)).toEqual(['gib']);
    expect(ids(added(2).fitted)).toEqual(['seal']);
    expect(added(2).fitted.rows[0]).toEqual({ id: 'seal', date: '2025-03-08', what: 'Seal' });
    expect(ids(added(2).allFitted)).toEqual(['gib', 'seal']);
  });

  test('names the spec of each reading', () => {
    expect(added(2).allReadings).toMatchObject({
      value: 2,
      how: '2 readings so far',
      rows: [{ what: 'Play' }, { what: 'Play' }],
    });
  });

  test('of all entries together is everything up to the last one', () => {
    const all = [1, 2, 3].reduce((sum, number) => sum + added(number).hours.value, 0);
    expect(all).toBe(project.asOf('2025-03-08' as Day).hoursByPhase.total.value);
  });
});
