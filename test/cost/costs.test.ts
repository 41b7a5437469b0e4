import { describe, expect, test } from 'vitest';
import { runningTotals } from '../../src/cost/costs.ts';
import { showMoney } from '../../src/money/money.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { toldIn } from '../words/told.ts';

const sources = [
  { id: 'base', kind: 'base', name: 'The press' },
  { id: 'donor', kind: 'donor', name: 'The spare press' },
];
const row = (id: string, amount: string, rest: Written = {}): Written => ({
  id,
  date: '2025-03-02',
  amount,
  category: 'part',
  phase: 'strip',
  what: 'A thing',
  ...rest,
});
const rate = (id: string, date: string, digits: string): Written => ({
  id,
  date,
  from: 'EUR',
  to: 'GBP',
  rate: digits,
  source: 'a bank',
});
const pounds = (minor: number) => showMoney({ minor, currency: 'GBP' }, 'en-GB');
const costsOf = (costs: readonly Written[], rest: { project?: Written; rates?: Written[] } = {}) =>
  projectOf({
    ...(rest.project ? { project: rest.project } : {}),
    lists: { sources, costs, rates: rest.rates ?? [] },
  });

describe('a cost row', () => {
  test('counts a sale, a refund and a deposit that comes back as money taken off', () => {
    const { now } = costsOf([
      row('c-1', '100.00', { category: 'vehicle', source: 'donor' }),
      row('c-2', '30.00', { kind: 'sale', source: 'donor' }),
      row('c-3', '5.50', { kind: 'refund' }),
      row('c-4', '4.50', { kind: 'deposit-back' }),
    ]);
    const { total } = now.costsByCategory;
    expect(pounds(total.value.minor)).toBe('£60.00');
    expect(toldIn(total.how)).toBe('sum of 4 cost rows, 3 of them credits');
  });

  test('leaves the cost of a donor below nothing when more was sold than it cost', () => {
    const { now } = costsOf([
      row('c-1', '100.00', { source: 'donor' }),
      row('c-2', '130.00', { kind: 'sale', source: 'donor' }),
    ]);
    expect(
      now.costsBySource.groups.map(({ name, figure }) => [toldIn(name), figure.value.minor]),
    ).toEqual([['The spare press', -3000]]);
  });

  test('in another currency counts at the newest rate on or before its day', () => {
    const rates = [
      rate('x-2', '2025-03-10', '0.9'),
      rate('x-1', '2025-03-01', '0.8'),
      rate('x-3', '2025-03-20', '0.7'),
    ];
    const { costs } = costsOf(
      ['2025-03-01', '2025-03-09', '2025-03-10', '2025-03-19'].map((date, index) =>
        row(`c-${index}`, '10.00 EUR', { date }),
      ),
      { rates },
    );
    expect(costs.map(({ counted, rate: used }) => [counted.minor, used?.id])).toEqual([
      [800, 'x-1'],
      [800, 'x-1'],
      [900, 'x-2'],
      [900, 'x-2'],
    ]);
    expect(costs[0]?.paid).toEqual({ minor: 1000, currency: 'EUR' });
  });

  test('without a rate on or before its day is left out', () => {
    const { costs } = costsOf([row('c-1', '10.00 EUR'), row('c-2', '10.00')], {
      rates: [rate('x-1', '2025-03-03', '0.8')],
    });
    expect(costs.map(({ id }) => id)).toEqual(['c-2']);
  });

  test('for a shop tool is out of the totals where the project says so, but still listed', () => {
    const rows = [row('c-1', '100.00'), row('c-2', '40.00', { category: 'tool' })];
    expect(costsOf(rows).now.costsByCategory.total.value.minor).toBe(14000);

    const out = costsOf(rows, { project: { rules: { tools: 'out' } } });
    expect(out.now.costs).toHaveLength(2);
    expect(out.now.costsByCategory.total).toMatchObject({ value: { minor: 10000 } });
    expect(out.now.costsByCategory.groups.map(({ key }) => key)).toEqual(['part']);
    expect(runningTotals(out.costs, 'GBP').map(({ total }) => total.minor)).toEqual([10000, 10000]);
  });

  test('of no source stands in a group of its own, after those with one', () => {
    const { now } = costsOf([row('c-1', '1.00'), row('c-2', '2.00', { source: 'base' })]);
    expect(
      now.costsBySource.groups.map(({ name, figure }) => [toldIn(name), figure.value.minor]),
    ).toEqual([
      ['The press', 200],
      ['not tied to a source', 100],
    ]);
  });
});

test('running totals add up row by row, credits taken off', () => {
  const { costs } = costsOf([
    row('c-1', '10.00'),
    row('c-2', '2.50', { date: '2025-03-01' }),
    row('c-3', '4.00', { kind: 'refund', date: '2025-03-03' }),
  ]);
  expect(runningTotals(costs, 'GBP').map(({ row: { id }, total }) => [id, total.minor])).toEqual([
    ['c-2', 250],
    ['c-1', 1250],
    ['c-3', 850],
  ]);
});
