import { describe, expect, test } from 'vitest';
import { figuresOn, line } from './budget-project.ts';

const budgets = [
  line('b-1', '2025-01-10', '100.00', 'strip'),
  line('b-2', '2025-01-10', '250.00', 'floor'),
  { id: 'b-3', date: '2025-01-10', amount: '50.00', contingency: 'true' },
  line('b-4', '2025-03-05', '180.00', 'strip', {
    because: 'The bolts were worse than they looked',
  }),
];
const rates = [
  { id: 'x-1', date: '2025-01-01', from: 'EUR', to: 'GBP', rate: '0.85', source: 'a bank' },
  { id: 'x-2', date: '2025-02-01', from: 'EUR', to: 'GBP', rate: '0.90', source: 'a bank' },
];
const allowed = (lists: Parameters<typeof figuresOn>[0], day: string) => {
  const { budget } = figuresOn(lists, day);
  return Object.fromEntries([...budget.lines].map(([key, { amount }]) => [key, amount.minor]));
};

describe('the budget on a day', () => {
  test('is the newest line of each phase on or before it', () => {
    expect(allowed({ budgets }, '2025-01-09')).toEqual({});
    expect(allowed({ budgets }, '2025-03-04')).toEqual({ strip: 10_000, floor: 25_000 });
    expect(allowed({ budgets }, '2025-03-05')).toEqual({ strip: 18_000, floor: 25_000 });
  });

  test('sums without the contingency, which stands beside it', () => {
    const { budget } = figuresOn({ budgets }, '2025-03-05');
    expect(budget.total.value.minor).toBe(43_000);
    expect(budget.total.rows.map(({ id }) => id)).toEqual(['b-4', 'b-2']);
    expect(budget.contingency?.amount.minor).toBe(5_000);
  });

  test('keeps each earlier line, and what a later one changed by how much and why', () => {
    const { budget } = figuresOn({ budgets }, '2025-03-05');
    expect(
      budget.changes.map(({ line: { id, because }, before, change }) => [
        ...[id, before?.minor, change.minor, because],
      ]),
    ).toEqual([
      ['b-1', undefined, 10_000, undefined],
      ['b-2', undefined, 25_000, undefined],
      ['b-3', undefined, 5_000, undefined],
      ['b-4', 10_000, 8_000, 'The bolts were worse than they looked'],
    ]);
  });

  test('takes a line in another currency at the newest rate on or before its day, not a later one', () => {
    const foreign = [line('b-1', '2025-01-10', '100.00 EUR', 'strip')];
    expect(allowed({ budgets: foreign, rates }, '2025-03-01')).toEqual({ strip: 8_500 });
  });

  test('takes a corrected line from the day the correction is written down, and the old one before', () => {
    const wrong = [
      line('b-1', '2025-01-10', '100.00', 'strip'),
      line('b-5', '2025-01-10', '110.00', 'strip', {
        ...{ corrects: 'b-1', recorded: '2025-02-01', because: 'A slip of the pen' },
      }),
    ];
    expect(allowed({ budgets: wrong }, '2025-01-31')).toEqual({ strip: 10_000 });
    expect(allowed({ budgets: wrong }, '2025-02-01')).toEqual({ strip: 11_000 });
  });

  test('tells a phase that is called "contingency" from the contingency', () => {
    const named = [
      line('b-1', '2025-01-10', '7.00', 'contingency'),
      { id: 'b-2', date: '2025-01-10', amount: '50.00', contingency: 'true' },
    ];
    const { budget } = figuresOn({ budgets: named }, '2025-01-10');
    expect(budget.lines.get('contingency')?.amount.minor).toBe(700);
    expect(budget.contingency?.amount.minor).toBe(5_000);
  });
});
