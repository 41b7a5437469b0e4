import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { openBook } from '../../src/book/open.ts';
import { budgetFigures } from '../../src/cost/budget-figures.ts';
import type { Day } from '../../src/time/day.ts';
import {
  byPhase,
  cell,
  centsOf,
  contentDir,
  countingRows,
  isWithheld,
  listIn,
  type Row,
  rowsOf,
  stateOf,
  sumBy,
} from './raw-ledger.ts';

// The budget of the demo worked out a second way, from the files as csv-parse and yaml read them, with decimal.js for all arithmetic.

const ID = 'lapwing';
const book = await openBook(contentDir, { now: new Date('2026-12-31T12:00:00Z') });
const project = book.project(ID);
if (project === undefined) throw new Error(`the demo has no project ${ID}`);

const rates = rowsOf(ID, 'rates');
const costs = rowsOf(ID, 'costs');
const phases = rowsOf(ID, 'phases');
const cents = (row: Row) => centsOf(row, 'GBP', rates);
const pence = (text: string) => new Decimal(text).times(100);
const upTo = (rows: readonly Row[], day: string) => rows.filter((row) => cell(row, 'date') <= day);

function linesOn(day: string): Map<string, Decimal> {
  const rows = upTo(rowsOf(ID, 'budgets'), day).toSorted((a, b) =>
    cell(a, 'date').localeCompare(cell(b, 'date')),
  );
  return new Map(
    rows.map((row) => [cell(row, 'phase') || 'contingency', pence(cell(row, 'amount'))]),
  );
}

function owedOn(day: string): Record<string, number> {
  const paid = upTo(costs, day);
  return sumBy(
    upTo(rowsOf(ID, 'orders'), day),
    (row) => cell(row, 'id'),
    (row) => {
      const [digits = '', code = ''] = cell(row, 'amount').split(' ');
      const paidOn = paid
        .filter((cost) => cell(cost, 'order') === row.id)
        .map((cost) => pence(cell(cost, 'amount').split(' ')[0] ?? ''));
      const open = Decimal.max(0, pence(digits).minus(Decimal.sum(0, ...paidOn)));
      return open.isZero() || code === ''
        ? open
        : centsOf({ amount: `${open.div(100)} ${code}`, date: day }, 'GBP', rates);
    },
  );
}

/** Low, middle and high of each part that is wanted on a day. */
function wantedOn(day: string): Map<string, Decimal[]> {
  const orders = upTo(rowsOf(ID, 'orders'), day).flatMap((row) => listIn(row, 'parts'));
  const steps = ['wanted', 'ordered', 'got', 'fitted', 'scrapped', 'sold'];
  const asOf = (row: Row): Row =>
    Object.fromEntries(
      Object.entries(row).filter(([name, value]) => !steps.includes(name) || String(value) <= day),
    );
  const wanted = rowsOf(ID, 'parts')
    .map(asOf)
    .filter((row) => stateOf(row) === 'wanted' && !orders.includes(cell(row, 'id')));
  return new Map(wanted.map((row) => [cell(row, 'id'), priceOf(row, day)]));
}

function priceOf(part: Row, day: string): Decimal[] {
  const estimate = cell(part, 'estimate');
  if (estimate !== '')
    return [
      cell(part, 'estimate-low') || estimate,
      estimate,
      cell(part, 'estimate-high') || estimate,
    ].map(pence);
  const seen = upTo(rowsOf(ID, 'searches'), day)
    .filter((row) => cell(row, 'part') === part.id && cell(row, 'price') !== '')
    .map((row) => centsOf({ amount: cell(row, 'price'), date: day }, 'GBP', rates));
  const newest = seen.at(-1);
  return newest ? [Decimal.min(...seen), newest, Decimal.max(...seen)] : [];
}

const days = [
  '2025-08-16',
  '2025-12-14',
  '2026-01-01',
  '2026-03-08',
  '2026-05-20',
  project.lastDay,
];

describe.each(days)('the budget of the demo on %s, worked out a second way', (day) => {
  const figures = budgetFigures(project.asOf(day as Day));
  const lines = linesOn(day);
  const counting = countingRows(ID, 'costs', day).filter(
    (row) => !['gift', 'trade'].includes(cell(row, 'kind')) && !isWithheld(row),
  );
  const spent = sumBy(
    counting.flatMap((row) => byPhase(row, cents(row))),
    ({ phase }) => phase,
    (share) => share.cents,
  );
  const owed = owedOn(day);
  const wanted = wantedOn(day);

  test('lines and contingency', () => {
    const ours = [...figures.budget.lines].map(([key, { amount }]) => [key, amount.minor]);
    const kept = figures.contingency?.set.value.minor;
    expect(Object.fromEntries([...ours, ['contingency', kept]])).toEqual(
      Object.fromEntries([...lines].map(([key, amount]) => [key, amount.toNumber()])),
    );
  });

  test('owed on each order', () => {
    const ours = figures.orders.map(({ order, counted }) => [order.id, counted.minor]);
    expect(Object.fromEntries(ours)).toEqual(owed);
  });

  test('parts still to buy, low, middle and high', () => {
    const ours = figures.toBuy.map(({ part, price }) => [
      part.id,
      price ? [price.low.minor, price.middle.minor, price.high.minor] : [],
    ]);
    expect(Object.fromEntries(ours)).toEqual(
      Object.fromEntries([...wanted].map(([id, price]) => [id, price.map(Number)])),
    );
  });

  test('forecast of each phase, by the rule that the page states', () => {
    const done = (row: Row) => cell(row, 'finished') !== '' && cell(row, 'finished') <= day;
    const ratios = phases
      .filter(done)
      .map((row) => new Decimal(spent[cell(row, 'id')] ?? 0).div(lines.get(cell(row, 'id')) ?? 1))
      .sort((a, b) => a.cmp(b));
    const half = ratios.length / 2;
    const median = [ratios[Math.ceil(half) - 1], ratios[Math.floor(half)]];
    const [low, high] = [ratios[0], ratios.at(-1)];

    const expected = phases.map((row) => {
      const id = cell(row, 'id');
      const ordered = rowsOf(ID, 'orders')
        .filter((order) => order.phase === id)
        .map((order) => owed[cell(order, 'id')] ?? 0);
      const parts = rowsOf(ID, 'parts').filter((part) => part.phase === id);
      const committed = [0, 1, 2].map((end) =>
        Decimal.sum(
          ...[spent[id] ?? 0, ...ordered],
          ...parts.map((part) => wanted.get(cell(part, 'id'))?.[end] ?? 0),
        ),
      );
      if (done(row)) return committed.map(Number);
      const budget = lines.get(id) ?? new Decimal(0);
      if (ratios.length < 2 || !low || !high)
        return [
          committed[0],
          Decimal.max(budget, committed[1] ?? 0),
          Decimal.max(budget, committed[2] ?? 0),
        ].map(Number);
      const habit = [low, Decimal.sum(...(median as Decimal[])).div(2), high];
      return habit.map((ratio, end) =>
        Decimal.max(
          budget.times(ratio).toDecimalPlaces(0, Decimal.ROUND_HALF_UP),
          committed[end] ?? 0,
        ).toNumber(),
      );
    });
    const ours = phases.map(({ id }) => {
      const { forecast } = figures.positions.find(({ key }) => key === id) ?? {};
      return forecast && [forecast.low.minor, forecast.middle.minor, forecast.high.minor];
    });
    expect(ours).toEqual(expected);
  });
});

test('a budget line a penny higher would be seen', () => {
  const sum = Decimal.sum(...[...linesOn(project.lastDay)].map(([, amount]) => amount)).plus(1);
  const { budget, contingency } = budgetFigures(project.now);
  expect(budget.total.value.minor + (contingency?.set.value.minor ?? 0)).toBe(sum.toNumber() - 1);
});

test('the orders and payments of the demo show each kind: owed, paid in parts, paid at once', () => {
  const named = sumBy(costs, (row) => cell(row, 'order') || 'none');
  expect(named['o-1']).toBeGreaterThan(1);
  expect(named['o-4']).toBe(1);
  expect(Object.entries(owedOn(project.lastDay)).filter(([, open]) => open > 0)).toEqual([
    ['o-6', 9_500],
  ]);
  expect(owedOn('2026-01-01')['o-1']).toBe(11_200);
});
