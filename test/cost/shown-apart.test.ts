import { expect, test } from 'vitest';
import { perHour } from '../../src/cost/per-hour.ts';
import { shownApart } from '../../src/cost/shown-apart.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { told, toldIn } from '../words/told.ts';

const row = (id: string, amount: string, rest: Written = {}): Written => ({
  id,
  date: '2025-03-02',
  amount,
  category: 'part',
  phase: 'strip',
  what: 'A thing',
  ...rest,
});
const worked = (id: string, hours: string, rest: Written = {}): Written => ({
  ...{ id, date: '2025-03-02', hours, phase: 'strip', work: 'cleaning', what: 'Worked', ...rest },
});
const phases = ['strip', 'paint'].map((id) => ({
  ...{ id, name: `The ${id}`, summary: 'Work.' },
  ...{ 'planned-start': '2025-01-01', 'planned-finish': '2025-03-31', 'planned-hours': '40:00' },
}));
const viewOf = (costs: Written[], hours: Written[] = [], rules: Written = {}) =>
  projectOf({ lists: { costs, hours, phases }, project: { rules } }).now;

test('gifts and trades stand apart at their stated value, in the totals or out of them', () => {
  const costs = [
    row('c-1', '100.00'),
    row('c-2', '20.00', { kind: 'gift' }),
    row('c-3', '30.00', { kind: 'trade' }),
  ];
  const out = viewOf(costs);
  const within = viewOf(costs, [], { gifts: 'in', trades: 'in' });
  for (const view of [out, within]) {
    const { gifts, trades } = shownApart(view);
    expect([gifts.value.minor, trades.value.minor]).toEqual([2000, 3000]);
    expect(gifts.rows.map(({ id }) => id)).toEqual(['c-2']);
  }
  expect(out.costsByCategory.total.value.minor).toBe(10000);
  expect(within.costsByCategory.total.value.minor).toBe(15000);
});

test('tools left out, and the rest of a shared one, are shown', () => {
  const tool = row('c-2', '40.00', { category: 'tool' });
  const out = shownApart(viewOf([row('c-1', '1.00'), tool], [], { tools: 'out' }));
  expect(told(out)).toMatchObject({
    toolsOut: { value: { minor: 4000 }, how: 'sum of 1 cost row' },
    elsewhere: { value: { minor: 0 } },
  });
  expect(shownApart(viewOf([row('c-1', '1.00'), tool], [], { tools: '30 %' }))).toMatchObject({
    toolsOut: { value: { minor: 0 } },
    elsewhere: { value: { minor: 2800 } },
  });
});

test('own labour has a value only at a stated rate', () => {
  const hours = [worked('h-1', '2:30', { who: 'ada' }), worked('h-2', '9:00', { who: 'helper' })];
  expect(shownApart(viewOf([], hours)).labour).toBeUndefined();
  const { labour } = shownApart(viewOf([], hours, { labourRate: '13.00' }));
  expect(labour).toMatchObject({ value: { minor: 3250 }, hours: { value: 150 } });
  expect(toldIn(labour?.how)).toBe('sum of 1 hours row, at the stated rate an hour');
});

test('money per hour is that of each phase with hours, rounded half away from zero, and of all', () => {
  const { phases: each, all } = perHour(
    viewOf(
      [row('c-1', '1.00'), row('c-2', '7.00', { phase: 'paint' })],
      [worked('h-1', '3:00'), worked('h-2', '0:48')],
    ),
  );
  // 1.00 in 3:48 h is 0.26315…; paint has no hours; 8.00 in 3:48 h is 2.10526….
  expect(each.map((item) => [item.name, item.perHour?.minor])).toEqual([
    ['The strip', 26],
    ['The paint', undefined],
  ]);
  expect(all.perHour?.minor).toBe(211);
});
