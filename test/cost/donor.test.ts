import { describe, expect, test } from 'vitest';
import { donorAccount } from '../../src/cost/donor.ts';
import type { Day } from '../../src/time/day.ts';
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
  category: 'vehicle',
  phase: 'strip',
  source: 'donor',
  what: 'A thing',
  ...rest,
});
const part = (id: string, rest: Written = {}): Written => ({
  id,
  name: id,
  system: 'body',
  source: 'donor',
  got: '2025-03-02',
  ...rest,
});
const press = (lists: { costs?: Written[]; parts?: Written[]; hours?: Written[] }, rules = {}) =>
  projectOf({ lists: { sources, ...lists }, project: { rules } });

function accountOf(...given: Parameters<typeof press>) {
  const { now } = press(...given);
  return donorAccount(now, donorIn(now));
}

function donorIn({ project }: ReturnType<typeof press>['now']) {
  const donor = project.sources.find(({ kind }) => kind === 'donor');
  if (donor === undefined) throw new Error('the fixed project has no donor');
  return donor;
}

const linesOf = ({ lines }: ReturnType<typeof accountOf>) =>
  lines.groups.map(({ name, figure }) => [toldIn(name), figure.value.minor, figure.rows.length]);
const sharesOf = ({ shares }: ReturnType<typeof accountOf>) =>
  shares.map((share) => [share.part.id, share.money.minor]);

describe('the account of a donor', () => {
  test('has what was paid for it, what was taken for pieces of it, and the net of both', () => {
    const account = accountOf({
      costs: [
        row('c-1', '400.00', { parts: ['axle'] }),
        row('c-2', '60.00', { category: 'transport' }),
        row('c-3', '15.00', { category: 'consumable' }),
        row('c-4', '8.00', { category: 'fee', parts: ['axle'] }),
        row('c-5', '120.00', { kind: 'sale', parts: ['door'] }),
        row('c-6', '30.00', { kind: 'scrap', mass: '0.2 t', category: 'other' }),
        row('c-7', '5.00', { kind: 'refund', category: 'fee' }),
        row('c-8', '999.00', { source: 'base' }),
      ],
      parts: [part('axle'), part('door', { sold: '2025-03-02' })],
    });
    expect(linesOf(account)).toEqual([
      ['Bought', 40000, 1],
      ['Carriage', 6000, 1],
      ['Other costs of taking it apart', 2300, 2],
      ['Sold', -12000, 1],
      ['Weighed in as scrap', -3000, 1],
      ['Refunds and deposits back', -500, 1],
    ]);
    expect(account.lines.total).toMatchObject({ value: { minor: 32800, currency: 'GBP' } });
    expect(account.scrap).toMatchObject({ kilograms: 200, perKilogram: { minor: 15 } });
  });

  test('leaves work on a part that was off, and money back for it, to that part', () => {
    const own = { category: 'service', parts: ['axle'] };
    const account = accountOf({
      costs: [
        row('c-1', '400.00'),
        row('c-2', '94.00', own),
        row('c-3', '4.00', { ...own, kind: 'refund' }),
      ],
      parts: [part('axle')],
    });
    expect(account.lines.total.rows.map(({ id }) => id)).toEqual(['c-1']);
  });

  test('stays below nothing when more was taken than paid, and the parts share the gain', () => {
    // Common practice, no source: a donor that paid for itself makes its parts cheaper than nothing.
    const account = accountOf({
      costs: [row('c-1', '100.00'), row('c-2', '201.00', { kind: 'sale' })],
      parts: [part('a', { value: '10' }), part('b', { value: '10' }), part('c', { value: '10' })],
    });
    expect(account.lines.total.value.minor).toBe(-10100);
    expect(sharesOf(account)).toEqual([
      ['a', -3367],
      ['b', -3367],
      ['c', -3366],
    ]);
  });

  test('takes a by-product off the joint cost before it is shared', () => {
    // M. W. Maher, cost accounting, problem 9-38: goods 72,000, by-product 450, net 71,550.
    const account = accountOf({
      costs: [row('c-1', '72000.00'), row('c-2', '450.00', { kind: 'sale' })],
      parts: [part('all', { value: '140000.00' })],
    });
    expect(account.lines.total.value.minor).toBe(7_155_000);
    expect(sharesOf(account)).toEqual([['all', 7_155_000]]);
  });

  test('is shared by stated value, 80,000 as published', () => {
    // M. W. Maher, cost accounting, problem 9-36.
    const account = accountOf({
      costs: [row('c-1', '80000.00')],
      parts: [
        part('x', { value: '80000.00' }),
        part('y', { value: '70000.00', fitted: '2025-03-02' }),
        part('z', { value: '50000.00' }),
      ],
    });
    expect(sharesOf(account)).toEqual([
      ['x', 3_200_000],
      ['y', 2_800_000],
      ['z', 2_000_000],
    ]);
  });

  test('is shared only over parts that are still there and not for sale, and have a value', () => {
    const worth = { value: '10.00' };
    const account = accountOf({
      costs: [row('c-1', '100.00')],
      parts: [
        part('kept', worth),
        part('sold', { ...worth, sold: '2025-03-02' }),
        part('scrapped', { ...worth, scrapped: '2025-03-02' }),
        part('offered', { ...worth, 'for-sale': '2025-03-02' }),
        part('no-value'),
        part('ours', { ...worth, source: 'base' }),
      ],
    });
    expect(sharesOf(account)).toEqual([['kept', 10000]]);
    expect(account.withoutValue.map(({ id }) => id)).toEqual(['no-value']);
  });

  test('is not shared when no part has a value', () => {
    const account = accountOf({ costs: [row('c-1', '100.00')], parts: [part('a'), part('b')] });
    expect(account.shares).toEqual([]);
    expect(account.withoutValue).toHaveLength(2);
  });

  test('never counts what is asked for what is left', () => {
    const parts = [
      part('offered', { 'for-sale': '2025-03-02', asking: '45.00' }),
      part('unpriced', { 'for-sale': '2025-03-02' }),
      part('gone', { 'for-sale': '2025-03-02', asking: '10.00', sold: '2025-03-02' }),
    ];
    const account = accountOf({ costs: [row('c-1', '100.00')], parts });
    expect(account.forSale.rows.map(({ id }) => id)).toEqual(['offered', 'unpriced']);
    expect(account.forSale.value.minor).toBe(4500);
    expect(toldIn(account.forSale.how)).toBe('sum of 1 asking price: an estimate, not counted');
    expect(account.lines.total.value.minor).toBe(10000);
  });

  test('is that of the day', () => {
    const late = { date: '2025-03-09' };
    const project = press({
      costs: [row('c-1', '100.00'), row('c-2', '30.00', { ...late, kind: 'sale' })],
      parts: [part('axle', { 'for-sale': '2025-03-09', asking: '12.00', value: '5.00' })],
    });
    const before = project.asOf('2025-03-08' as Day);
    const account = donorAccount(before, donorIn(before));
    expect(account.lines.total.value.minor).toBe(10000);
    expect(account.forSale.rows).toEqual([]);
    expect(sharesOf(account)).toEqual([['axle', 10000]]);
  });

  test('has the hours of its own rows, at a rate only where the project states one, and only own work', () => {
    const hours = [
      { who: 'ada', source: 'donor', hours: '1:20' },
      { who: 'helper', source: 'donor', hours: '2:00' },
      { who: 'ada', hours: '5:00' },
    ].map((given, index) => ({
      id: `h-${index}`,
      date: '2025-03-02',
      phase: 'strip',
      work: 'cleaning',
      what: 'Worked',
      ...given,
    }));
    expect(accountOf({ hours })).toMatchObject({ hours: { value: 200 }, labour: undefined });
    // 80 minutes at 14.50: 19.333…
    const { labour, lines } = accountOf({ hours }, { labourRate: '14.50' });
    expect(labour).toMatchObject({ value: { minor: 1933 }, hours: { value: 80 } });
    expect(lines.total.value.minor).toBe(0);
  });
});
