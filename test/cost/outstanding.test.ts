import { describe, expect, test } from 'vitest';
import { cost, figuresOn, order } from './budget-project.ts';

const orders = [order('o-1', '2025-05-01', '300.00')];
const deposit = cost('c-1', '2025-05-01', '100.00', 'paint', { kind: 'deposit', order: 'o-1' });
const rest = cost('c-2', '2025-05-20', '200.00', 'paint', { order: 'o-1' });
const back = (date: string, amount: string) =>
  cost('c-3', date, amount, 'paint', { kind: 'refund', order: 'o-1' });

const only = (lists: Parameters<typeof figuresOn>[0], day: string, project = {}) => {
  const [found] = figuresOn({ orders, ...lists }, day, project).orders;
  return found && { state: found.state, open: found.open.minor, over: found.overPaid.minor };
};

describe('what is still owed on an order', () => {
  test('is nothing before it is placed, then its amount less the deposit, until the rest is paid', () => {
    const lists = { costs: [deposit, rest] };
    expect(only(lists, '2025-04-30')).toBeUndefined();
    expect(only(lists, '2025-05-01')).toEqual({ state: 'open', open: 20_000, over: 0 });
    expect(only(lists, '2025-05-19')).toEqual({ state: 'open', open: 20_000, over: 0 });
    expect(only(lists, '2025-05-20')).toEqual({ state: 'paid', open: 0, over: 0 });
  });

  test('opens to the rows that paid it', () => {
    const [found] = figuresOn({ orders, costs: [deposit, rest] }, '2025-06-01').orders;
    expect(found?.payments.map(({ id }) => id)).toEqual(['c-1', 'c-2']);
    expect(found?.paid.minor).toBe(30_000);
  });

  test('grows again by a deposit that came back before it was paid whole', () => {
    const costs = [deposit, back('2025-05-10', '40.00')];
    expect(only({ costs }, '2025-05-10')).toEqual({ state: 'open', open: 24_000, over: 0 });
  });

  test('stays nothing when money comes back after it was paid whole', () => {
    const costs = [deposit, rest, back('2025-06-02', '18.00')];
    expect(only({ costs }, '2025-06-02')).toEqual({ state: 'paid', open: 0, over: 0 });
  });

  test('is never below zero: what was paid beyond it is told as such', () => {
    const costs = [deposit, cost('c-2', '2025-05-20', '230.00', 'paint', { order: 'o-1' })];
    expect(only({ costs }, '2025-05-20')).toEqual({ state: 'paid', open: 0, over: 3_000 });
  });

  test('is nothing from the day on which the order was closed', () => {
    const lists = {
      orders: [order('o-1', '2025-05-01', '300.00', { closed: '2025-05-09' })],
      costs: [deposit],
    };
    expect(only(lists, '2025-05-08')?.open).toBe(20_000);
    expect(only(lists, '2025-05-09')).toEqual({ state: 'closed', open: 0, over: 0 });
  });

  test('in another currency counts at the newest rate on or before the day, and says which', () => {
    const rates = [
      { id: 'x-1', date: '2025-05-01', from: 'EUR', to: 'GBP', rate: '0.85', source: 'a bank' },
      { id: 'x-2', date: '2025-05-10', from: 'EUR', to: 'GBP', rate: '0.90', source: 'a bank' },
    ];
    const foreign = { orders: [order('o-1', '2025-05-01', '200.00 EUR')], rates };
    const on = (day: string) => figuresOn(foreign, day).orders[0];
    expect(on('2025-05-09')).toMatchObject({ counted: { minor: 17_000 }, rate: '0.85' });
    expect(on('2025-05-10')).toMatchObject({ counted: { minor: 18_000 }, rate: '0.90' });
  });

  test('for a shop tool counts by the rule of the project', () => {
    const tool = { orders: [order('o-1', '2025-05-01', '300.00', { category: 'tool' })] };
    const counted = (tools: string) =>
      figuresOn(tool, '2025-05-01', { rules: { tools } }).total.ordered.value.minor;
    expect([counted('in'), counted('40 %'), counted('out')]).toEqual([30_000, 12_000, 0]);
  });

  test('goes by the corrected order, which keeps the payments of the first', () => {
    const lists = {
      orders: [
        ...orders,
        order('o-2', '2025-05-01', '320.00', {
          ...{ corrects: 'o-1', recorded: '2025-05-15', because: 'The offer had carriage in it' },
        }),
      ],
      costs: [deposit],
    };
    expect(only(lists, '2025-05-14')?.open).toBe(20_000);
    expect(only(lists, '2025-05-15')?.open).toBe(22_000);
  });
});
