import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type BudgetFigures, budgetFigures } from '../../src/cost/budget-figures.ts';
import { overrunOf, scaled } from '../../src/cost/overrun.ts';
import type { Day } from '../../src/time/day.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { phases, sources } from '../cost/budget-project.ts';
import { told } from '../words/told.ts';
import { writtenDay } from './written-rows.ts';

const money = fc.integer({ min: 0, max: 99_999 }).map((pence) => (pence / 100).toFixed(2));
const phaseId = fc.constantFrom('strip', 'floor', 'paint');
const orderIds = ['o-0', 'o-1', 'o-2'];

const costs = fc.record(
  {
    ...{ date: writtenDay, amount: money, phase: phaseId },
    category: fc.constantFrom('part', 'tool'),
    kind: fc.constantFrom('payment', 'deposit', 'refund', 'sale'),
    order: fc.constantFrom(...orderIds),
    what: fc.constant('Paid'),
  },
  { requiredKeys: ['date', 'amount', 'phase', 'category', 'what'] },
);
const orders = fc.record(
  {
    ...{ date: writtenDay, amount: money, phase: phaseId, closed: writtenDay },
    category: fc.constantFrom('part', 'tool'),
    what: fc.constant('Ordered'),
  },
  { requiredKeys: ['date', 'amount', 'phase', 'category', 'what'] },
);
const parts = fc
  .tuple(writtenDay, phaseId, fc.array(fc.nat({ max: 9_999 }), { minLength: 3, maxLength: 3 }))
  .map(([wanted, phase, pence]): Written => {
    const [low, middle, high] = pence.sort((a, b) => a - b).map((size) => (size / 100).toFixed(2));
    return {
      ...{ name: 'A part', system: 'body', source: 'new', wanted, phase },
      ...{ estimate: `${middle}`, 'estimate-low': `${low}`, 'estimate-high': `${high}` },
    };
  });
const byPhase = fc.record({ date: writtenDay, amount: money, phase: phaseId });
const set = fc.record({ date: writtenDay, amount: money, contingency: fc.constant('true') });

const listOf = (row: fc.Arbitrary<Written>, prefix: string, maxLength: number) =>
  fc
    .array(row, { maxLength })
    .map((rows) => rows.map((fields, index): Written => ({ id: `${prefix}-${index}`, ...fields })));

const lists = fc.record({
  phases: fc.constant(phases),
  sources: fc.constant(sources),
  costs: listOf(costs as fc.Arbitrary<Written>, 'c', 10),
  orders: listOf(orders as fc.Arbitrary<Written>, 'o', 3),
  parts: listOf(parts, 'p', 4),
  budgets: fc
    .tuple(listOf(byPhase, 'b', 6), listOf(set, 'k', 2))
    .map(([lines, kept]) => [...lines, ...kept]),
});
const tools = fc.constantFrom('in', 'out', '30 %');

const ends = ({ low, middle, high }: Record<'low' | 'middle' | 'high', { minor: number }>) => [
  ...[low.minor, middle.minor, high.minor],
];
const inOrder = (sizes: readonly number[]) =>
  expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));

function onAnyDay(holds: (figures: BudgetFigures, spent: number) => void): void {
  fc.assert(
    fc.property(lists, tools, writtenDay, (written, rule, day) => {
      const view = projectOf({ project: { rules: { tools: rule } }, lists: written }).asOf(day);
      holds(budgetFigures(view), view.costsByCategory.total.value.minor);
    }),
  );
}

test('a forecast is low ≤ middle ≤ high, in each phase and in all, and so is what it takes from the contingency', () => {
  onAnyDay(({ positions, total, contingency }) => {
    for (const { forecast, toBuyRange } of positions) {
      inOrder(ends(forecast));
      inOrder(ends(forecast.committed));
      inOrder(ends(toBuyRange));
    }
    inOrder(ends(total.forecast));
    if (contingency) inOrder(ends(contingency.used));
  });
});

test('spent, ordered and still to buy are what is committed, which no forecast lies below', () => {
  onAnyDay(({ positions }) => {
    for (const { spent, ordered, toBuy, forecast } of positions) {
      const sum = Decimal.sum(...[spent, ordered, toBuy].map(({ value }) => value.minor));
      expect(forecast.committed.middle.minor).toBe(sum.toNumber());
      for (const end of ['low', 'middle', 'high'] as const)
        expect(forecast[end].minor).toBeGreaterThanOrEqual(forecast.committed[end].minor);
    }
  });
});

test('phases add up: to the money spent, to the lines, to the forecast', () => {
  onAnyDay(({ positions, total, budget }, spent) => {
    const sum = (sizes: readonly number[]) => Decimal.sum(0, ...sizes).toNumber();
    expect(sum(positions.map((one) => one.spent.value.minor))).toBe(spent);
    expect(total.spent.value.minor).toBe(spent);
    expect(sum(positions.map((one) => one.budget?.value.minor ?? 0))).toBe(
      budget.total.value.minor,
    );
    for (const end of ['low', 'middle', 'high'] as const)
      expect(total.forecast[end].minor).toBe(
        sum(positions.map(({ forecast }) => forecast[end].minor)),
      );
  });
});

test('nothing owed is below zero, nothing is owed beyond the order, and nobody owes what was overpaid', () => {
  onAnyDay(({ orders: placed }) => {
    for (const { open, overPaid, amount, paid, state } of placed) {
      expect(open.minor).toBeGreaterThanOrEqual(0);
      expect(overPaid.minor).toBeGreaterThanOrEqual(0);
      expect(open.minor * overPaid.minor).toBe(0);
      if (state === 'open') expect(open.minor + paid.minor).toBe(amount.minor);
    }
  });
});

test('a line, an order or a payment of a later day changes nothing on an earlier one', () => {
  fc.assert(
    fc.property(lists, writtenDay, writtenDay, (written, one, other) => {
      const [day, last] = [one, other].sort() as [Day, Day];
      const happened = (rows: readonly Written[]) =>
        rows.filter((row) => row.date === undefined || String(row.date) <= last);
      const { budgets, orders: placed, costs: paid } = written;
      const early = {
        ...written,
        ...{ budgets: happened(budgets), orders: happened(placed), costs: happened(paid) },
      };
      const on = (some: typeof written) => budgetFigures(projectOf({ lists: some }).asOf(day));
      expect(told(on(written))).toEqual(told(on(early)));
    }),
  );
});

test('the ratios are those of decimal.js, median and all, and amounts are scaled as it rounds', () => {
  // Forty digits: more than a product of two amounts and a quotient need.
  const Exact = Decimal.clone({ precision: 40, rounding: Decimal.ROUND_HALF_UP });
  const pair = fc.tuple(
    fc.integer({ min: -99_999, max: 999_999 }),
    fc.integer({ min: 1, max: 999_999 }),
  );
  fc.assert(
    fc.property(
      fc.array(pair, { minLength: 2, maxLength: 9 }),
      fc.nat(9_999_999),
      (pairs, size) => {
        const gbp = (minor: number) => ({ minor, currency: 'GBP' });
        const overrun = overrunOf(
          pairs.map(([spent, budget], index) => ({
            ...{ id: `${index}`, name: `${index}`, spent: gbp(spent), budget: gbp(budget) },
          })),
        );
        const ratios = pairs
          .map(([spent, budget]) => new Exact(spent).div(budget))
          .sort((a, b) => a.cmp(b));
        const half = ratios.length / 2;
        const middle = [ratios[Math.ceil(half) - 1], ratios[Math.floor(half)]] as [
          Decimal,
          Decimal,
        ];
        const expected = [ratios[0], middle[0].plus(middle[1]).div(2), ratios.at(-1)] as Decimal[];
        const ours = overrun && [overrun.smallest, overrun.median, overrun.largest];
        expect(ours?.map((ratio) => scaled(gbp(size), ratio).minor)).toEqual(
          // A quotient cut at forty digits may lie a hair off a half. Adding zero turns −0 into 0.
          expected.map(
            (ratio) => Number(ratio.times(size).toDecimalPlaces(20).toDecimalPlaces(0)) + 0,
          ),
        );
      },
    ),
  );
});
