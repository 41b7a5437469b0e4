import { describe, expect, test } from 'vitest';
import { costsByShare } from '../../src/cost/costs.ts';
import { toDecimal } from '../../src/money/money.ts';
import type { Day } from '../../src/time/day.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { toldIn } from '../words/told.ts';

const row = (id: string, amount: string, rest: Written = {}): Written => ({
  ...{ id, date: '2025-03-02', amount, category: 'part', phase: 'strip', what: 'A thing' },
  ...rest,
});
const rate = (id: string, digits: string, rest: Written = {}): Written => ({
  ...{ id, date: '2025-03-01', from: 'EUR', to: 'GBP', rate: digits, source: 'a bank' },
  ...rest,
});
const projectWith = (costs: readonly Written[], rules: Written = {}, rates: Written[] = []) =>
  projectOf({ project: { rules }, lists: { costs, rates } });
const totalOf = (costs: readonly Written[], rules?: Written) =>
  toDecimal(projectWith(costs, rules).now.costsByCategory.total.value);

describe('gifts and trades', () => {
  const rows = [
    row('c-1', '100.00'),
    row('c-2', '30.00', { kind: 'gift' }),
    row('c-3', '7.00', { kind: 'trade' }),
  ];

  test('are in or out of the totals by rule of the project, out unless it says so', () => {
    expect(totalOf(rows)).toBe('100.00');
    expect(totalOf(rows, { gifts: 'in' })).toBe('130.00');
    expect(totalOf(rows, { trades: 'in' })).toBe('107.00');
    expect(totalOf(rows, { gifts: 'in', trades: 'in' })).toBe('137.00');
  });

  test('are told apart in the words of a total', () => {
    const { total } = projectWith(rows, { gifts: 'in' }).now.costsByCategory;
    expect(toldIn(total.how)).toBe(
      'sum of 2 cost rows, 1 of them gifts or trades at a stated value, 1 left out by rule',
    );
  });

  test('of shop tools are held to the rule for tools as well', () => {
    const tool = [row('c-1', '30.00', { kind: 'gift', category: 'tool' })];
    expect(totalOf(tool, { gifts: 'in', tools: 'out' })).toBe('0.00');
    expect(totalOf(tool, { gifts: 'in', tools: '50 %' })).toBe('15.00');
  });
});

describe('a share', () => {
  const tool = row('c-1', '99.99', { category: 'tool' });

  test('of shop tools counts by rule of the project, and the rest is told', () => {
    const [counted] = projectWith([tool], { tools: '40 %' }).costs;
    expect([counted?.counted.minor, counted?.elsewhere.minor]).toEqual([4000, 5999]);
  });

  test('that a row states goes before the rule', () => {
    const [counted] = projectWith([{ ...tool, share: '25 %' }], { tools: '40 %' }).costs;
    expect([counted?.counted.minor, counted?.elsewhere.minor]).toEqual([2500, 7499]);
  });

  test('of anything else counts too, and of a credit with its sign', () => {
    const [counted] = projectWith([row('c-1', '10.01', { share: '50 %', kind: 'sale' })]).costs;
    expect([counted?.paid.minor, counted?.counted.minor, counted?.elsewhere.minor]).toEqual([
      -1001, -501, -500,
    ]);
  });

  test('of more than the whole, which the check refuses, leaves the row whole', () => {
    const [counted] = projectWith([row('c-1', '10.00', { share: '150 %' })]).costs;
    expect([counted?.counted.minor, counted?.elsewhere.minor]).toEqual([1000, 0]);
  });
});

describe('tax', () => {
  test('outside the amount comes on top, inside it does not', () => {
    const taxed = (side: string) => row('c-1', '100.00', { tax: side, 'tax-rate': '20 %' });
    const paid = ['outside', 'inside'].map((side) => {
      const [counted] = projectWith([taxed(side)]).costs;
      return [counted?.paid.minor, counted?.tax?.minor, counted?.counted.minor];
    });
    expect(paid).toEqual([
      [12000, 2000, 12000],
      [10000, 1667, 10000],
    ]);
  });

  test('of a refund is given back with it', () => {
    const refund = row('c-1', '100.00', { tax: 'outside', 'tax-rate': '20 %', kind: 'refund' });
    const [counted] = projectWith([refund]).costs;
    expect([counted?.counted.minor, counted?.tax?.minor]).toEqual([-12000, -2000]);
  });
});

describe('a split row', () => {
  const phasesOf = (rows: readonly Written[], rates: Written[] = []) =>
    projectWith(rows, {}, rates).now.costsByPhase.groups.map(({ key, figure }) => [
      key,
      figure.value.minor,
    ]);
  const split = (portions: string[], amount = '100.00', rest: Written = {}) => {
    const { phase: _, ...whole } = row('c-1', amount, rest);
    return { ...whole, 'split-phases': portions };
  };

  test('gives each phase its share, and no penny is lost', () => {
    expect(phasesOf([split(['a', 'b', 'c'])])).toEqual([
      ['a', 3334],
      ['b', 3333],
      ['c', 3333],
    ]);
    expect(phasesOf([split(['a=99.99', 'b=0.01'])])).toEqual([
      ['a', 9999],
      ['b', 1],
    ]);
  });

  test('in another currency shares what it comes to', () => {
    // 100.00 EUR at 0.8431 is 84.31 GBP; a third of it each is 28.1033…: the penny goes to the first.
    expect(
      phasesOf([split(['a=33.33', 'b=33.33', 'c=33.34'], '100.00 EUR')], [rate('x-1', '0.8431')]),
    ).toEqual([
      ['a', 2810],
      ['b', 2810],
      ['c', 2811],
    ]);
  });

  test('as a credit takes off in shares', () => {
    expect(phasesOf([split(['a', 'b'], '0.01', { kind: 'refund' })])).toEqual([
      ['a', -1],
      ['b', 0],
    ]);
  });

  test('stands once in the total, and in a group as a share that knows the whole', () => {
    const { groups, total } = projectWith([split(['a:3', 'b:1'])]).now.costsByPhase;
    expect(toldIn(total.how)).toBe('sum of 1 cost row');
    expect(toldIn(groups[0]?.figure.how)).toBe('sum of 1 cost row, 1 of them a share');
    expect(groups[0]?.figure.rows[0]?.shareOf?.minor).toBe(10000);
  });

  test('by parts adds up to the total, what no part bears in a group of its own', () => {
    const rows = [row('c-1', '10.00', { 'split-parts': ['gib:2', 'nut:1'] }), row('c-2', '5.00')];
    const { costs, currency } = projectWith(rows);
    const byPart = costsByShare(costs, currency, {
      sharesIn: ({ parts }) => parts,
      nameOf: (id) => id,
      order: ['nut'],
    });
    expect(byPart.groups.map(({ key, figure }) => [key, figure.value.minor])).toEqual([
      ['nut', 333],
      ['gib', 667],
      ['none', 500],
    ]);
  });
});

describe('an amount converted at a rate that was corrected', () => {
  const corrected = rate('x-2', '0.9', {
    ...{ corrects: 'x-1', recorded: '2025-03-10', because: 'Read the wrong line' },
  });
  const project = projectWith([row('c-1', '10.00 EUR')], {}, [rate('x-1', '0.8'), corrected]);
  const on = (day: string) => project.asOf(day as Day).costsByCategory.total.value.minor;

  test('counts on each day at the rate that was believed', () => {
    expect(['2025-03-02', '2025-03-09', '2025-03-10'].map(on)).toEqual([800, 800, 900]);
  });

  test('is one row after the other, and the last stands', () => {
    expect(
      project.costs.map(({ id, rate: at, since, until }) => [id, at?.id, since, until]),
    ).toEqual([
      ['c-1', 'x-1', undefined, '2025-03-10'],
      ['c-1', 'x-2', '2025-03-10', undefined],
    ]);
  });

  test('paid after the correction is one row at the corrected rate', () => {
    const late = projectWith([row('c-1', '10.00 EUR', { date: '2025-03-11' })], {}, [
      rate('x-1', '0.8'),
      corrected,
    ]);
    expect(late.costs.map(({ rate: at, since, until }) => [at?.id, since, until])).toEqual([
      ['x-2', undefined, undefined],
    ]);
  });

  test('and corrected itself meanwhile follows both', () => {
    const both = projectWith(
      [
        row('c-1', '10.00 EUR'),
        row('c-2', '20.00 EUR', { corrects: 'c-1', recorded: '2025-03-05', because: 'Two' }),
      ],
      {},
      [rate('x-1', '0.8'), corrected],
    );
    const then = (day: string) => both.asOf(day as Day).costsByCategory.total.value.minor;
    expect(['2025-03-04', '2025-03-05', '2025-03-09', '2025-03-10'].map(then)).toEqual([
      800, 1600, 1600, 1800,
    ]);
  });
});
