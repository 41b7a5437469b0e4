import { describe, expect, test } from 'vitest';
import type { Project, View } from '../../src/book/types.ts';
import type { Day } from '../../src/time/day.ts';
import { projectOf, type Written } from '../book/project-of.ts';

const cost = (id: string, amount: string, rest: Written = {}): Written => ({
  ...{ id, date: '2025-03-01', amount, category: 'part', phase: 'strip', what: 'A thing' },
  ...rest,
});
const hours = (id: string, length: string, rest: Written = {}): Written => ({
  ...{ id, date: '2025-03-01', hours: length, phase: 'strip', work: 'cleaning', what: 'Cleaned' },
  ...rest,
});
const replaces = (corrects: string, recorded: string): Written => {
  return { corrects, recorded, because: 'It was wrong' };
};
const withdraws = (id: string, row: string, date: string): Written => {
  return { id, row, date, because: 'It was for another machine' };
};
const on = (project: Project, day: string): View => project.asOf(day as Day);
const spent = (project: Project, day: string) => on(project, day).costsByCategory.total.value.minor;

describe('a chain of corrections', () => {
  const project = projectOf({
    lists: {
      costs: [
        cost('c-1', '100'),
        cost('c-2', '110', replaces('c-1', '2025-03-10')),
        cost('c-3', '120', replaces('c-2', '2025-03-20')),
      ],
      withdrawals: [withdraws('w-1', 'c-3', '2025-03-30')],
    },
  });

  test('counts on each day the row that was believed then', () => {
    const days = ['02-28', '03-01', '03-09', '03-10', '03-19', '03-20', '03-29', '03-30'];
    expect(days.map((day) => spent(project, `2025-${day}`))).toEqual([
      0, 10000, 10000, 11000, 11000, 12000, 12000, 0,
    ]);
  });

  test('keeps every row of it in the book, with the day from which it no longer counts', () => {
    expect(project.costs.map(({ id, since, until }) => [id, since, until])).toEqual([
      ['c-1', undefined, '2025-03-10'],
      ['c-2', '2025-03-10', '2025-03-20'],
      ['c-3', '2025-03-20', '2025-03-30'],
    ]);
  });

  test('is listed in order of the days that things were said', () => {
    expect(project.corrections.map(({ old, by, said, on: day }) => [old, by, said, day])).toEqual([
      ['c-1', 'c-2', 'c-2', '2025-03-10'],
      ['c-2', 'c-3', 'c-3', '2025-03-20'],
      ['c-3', undefined, 'w-1', '2025-03-30'],
    ]);
  });

  test('counts in the view of now, though nothing else is as new as the last of it', () => {
    expect(project.lastDay).toBe('2025-03-30');
    expect(project.now.costs).toEqual([]);
  });
});

test('two corrections of one day leave the last of them', () => {
  const project = projectOf({
    lists: {
      costs: [
        cost('c-3', '120', replaces('c-2', '2025-03-10')),
        cost('c-2', '110', replaces('c-1', '2025-03-10')),
        cost('c-1', '100'),
      ],
    },
  });
  expect([spent(project, '2025-03-09'), spent(project, '2025-03-10')]).toEqual([10000, 12000]);
});

test('a correction that gives a row a later date counts from that date on', () => {
  const project = projectOf({
    lists: {
      costs: [
        cost('c-1', '100'),
        cost('c-2', '100', { ...replaces('c-1', '2025-03-10'), date: '2025-03-08' }),
      ],
    },
  });
  const days = ['2025-03-01', '2025-03-08', '2025-03-09', '2025-03-10'];
  expect(days.map((day) => on(project, day).costs.map(({ id }) => id))).toEqual([
    ['c-1'],
    ['c-1'],
    ['c-1'],
    ['c-2'],
  ]);
});

test('corrected hours count in every breakdown from the day that was said', () => {
  const project = projectOf({
    lists: {
      hours: [
        hours('h-1', '5:00'),
        hours('h-2', '4:00', { ...replaces('h-1', '2025-03-10'), work: 'fitting' }),
      ],
    },
  });
  const works = (day: string) =>
    on(project, day).hoursByWork.groups.map(({ key, figure }) => [key, figure.value]);
  expect(works('2025-03-09')).toEqual([['cleaning', 300]]);
  expect(works('2025-03-10')).toEqual([['fitting', 240]]);
});

test('a corrected search is seen as it was known', () => {
  const search = (id: string, result: string, rest: Written = {}) => ({
    ...{ id, date: '2025-03-01', part: 'gib', result },
    ...rest,
  });
  const project = projectOf({
    lists: {
      searches: [search('s-1', 'none'), search('s-2', 'promised', replaces('s-1', '2025-03-10'))],
    },
  });
  const results = (day: string) => on(project, day).searches.map(({ result }) => result);
  expect([results('2025-03-09'), results('2025-03-10')]).toEqual([['none'], ['promised']]);
});

describe('a corrected part', () => {
  const part = (id: string, rest: Written): Written => {
    return { id, name: 'Gib', system: 'ram', source: 'new', ...rest };
  };
  const project = projectOf({
    lists: {
      sources: ['new', 'donor'].map((id) => ({ id, kind: id, name: id })),
      parts: [
        part('gib', { got: '2025-03-01' }),
        part('gib-2', {
          ...replaces('gib', '2025-03-10'),
          got: '2025-03-01',
          fitted: '2025-03-05',
          source: 'donor',
        }),
        part('gib-3', { ...replaces('gib-2', '2025-03-20'), got: '2025-03-01', source: 'donor' }),
      ],
      costs: [
        cost('c-1', '10', { parts: ['gib'] }),
        cost('c-2', '20', { parts: ['gib-2'] }),
        cost('c-3', '30', { 'split-parts': ['gib-3:1', 'nut:2'] }),
      ],
      searches: [{ id: 's-1', date: '2025-03-01', part: 'gib-3', result: 'none' }],
    },
  });

  test('is in the state that was believed', () => {
    const states = ['2025-03-09', '2025-03-10', '2025-03-20'].map((day) =>
      on(project, day).parts.map(({ part: { id, source }, state }) => [id, source, state]),
    );
    expect(states).toEqual([
      [['gib', 'new', 'in-hand']],
      [['gib', 'donor', 'fitted']],
      [['gib', 'donor', 'in-hand']],
    ]);
  });

  test('goes by the id of its first row, whichever of its rows is named', () => {
    expect(project.parts.map(({ id }) => id)).toEqual(['gib']);
    expect(project.partRows.map(({ id, rowId }) => [id, rowId])).toEqual([
      ['gib', 'gib'],
      ['gib', 'gib-2'],
      ['gib', 'gib-3'],
    ]);
    expect(project.costs.flatMap(({ parts }) => parts.map(({ id }) => id))).toEqual([
      ...['gib', 'gib', 'gib'],
      'nut',
    ]);
    expect(project.searches.map(({ part: named }) => named)).toEqual(['gib']);
  });
});

test('a corrected order goes by the id of its first row, and cost rows that pay it too', () => {
  const order = (id: string, amount: string, rest: Written = {}): Written => ({
    ...{ id, date: '2025-03-01', amount, category: 'part', phase: 'strip', what: 'Bushes' },
    ...rest,
  });
  const project = projectOf({
    lists: {
      orders: [order('o-1', '40'), order('o-2', '45', replaces('o-1', '2025-03-10'))],
      costs: [cost('c-1', '20', { order: 'o-2' }), cost('c-2', '20', { order: 'o-1' })],
    },
  });
  expect(project.orders.map(({ id, rowId, until }) => [id, rowId, until])).toEqual([
    ['o-1', 'o-1', '2025-03-10'],
    ['o-1', 'o-2', undefined],
  ]);
  expect(project.costs.map(({ order: paid }) => paid)).toEqual(['o-1', 'o-1']);
});
