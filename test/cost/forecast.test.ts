import { describe, expect, test } from 'vitest';
import { forecastRule, forecastWords } from '../../src/cost/forecast-words.ts';
import { wordsOf } from '../../src/words/words.ts';
import { cost, figuresOn, line, order, part } from './budget-project.ts';

// Worked by hand. Strip: 110 spent of 100 = 110 %. Floor: 285 of 300 = 95 %. Median of the two: 102.5 %.
// Paint, budget 400: 50 spent + 60 still owed + 40 (30 to 90) still to buy = 150 (140 to 200) committed.
const lists = {
  budgets: [
    line('b-1', '2025-01-01', '100.00', 'strip'),
    line('b-2', '2025-01-01', '300.00', 'floor'),
    line('b-3', '2025-01-01', '400.00', 'paint'),
    { id: 'b-4', date: '2025-01-01', amount: '30.00', contingency: 'true' },
  ],
  costs: [
    cost('c-1', '2025-03-05', '110.00', 'strip'),
    cost('c-2', '2025-04-02', '300.00', 'floor'),
    cost('c-3', '2025-04-09', '15.00', 'floor', { kind: 'sale' }),
    cost('c-4', '2025-05-02', '30.00', 'paint'),
    cost('c-5', '2025-05-03', '20.00', 'paint', { kind: 'deposit', order: 'o-1' }),
  ],
  orders: [order('o-1', '2025-05-03', '80.00')],
  parts: [part('trim', { estimate: '40.00', 'estimate-low': '30.00', 'estimate-high': '90.00' })],
};

const position = (key: string, day: string, changed = {}) => {
  const found = figuresOn({ ...lists, ...changed }, day).positions.find((one) => one.key === key);
  if (found === undefined) throw new Error(`no ${key} on ${day}`);
  return found;
};
const ends = ({ low, middle, high }: Record<'low' | 'middle' | 'high', { minor: number }>) => [
  ...[low.minor, middle.minor, high.minor],
];

describe('the forecast', () => {
  test('of an unfinished phase is its budget at the ratios of the finished ones: 95 %, 102.5 %, 110 %', () => {
    const paint = position('paint', '2025-05-03');
    expect(ends(paint.forecast.committed)).toEqual([14_000, 15_000, 20_000]);
    expect(ends(paint.forecast)).toEqual([38_000, 41_000, 44_000]);
    expect(paint.over?.minor).toBe(1_000);
  });

  test('is never less than what is committed', () => {
    const dear = [part('trim', { estimate: '295.00', 'estimate-low': '280.00' })];
    const paint = position('paint', '2025-05-03', { parts: dear });
    // 50 + 60 + 280 = 390 > 380; 405 < 410; 405 < 440
    expect(ends(paint.forecast)).toEqual([39_000, 41_000, 44_000]);
  });

  test('of a finished phase is what is committed, credits taken off', () => {
    expect(ends(position('floor', '2025-05-03').forecast)).toEqual([28_500, 28_500, 28_500]);
    expect(position('floor', '2025-05-03').over?.minor).toBe(-1_500);
  });

  test('of a finished phase still counts a part that is wanted for it', () => {
    const parts = [part('clip', { phase: 'floor', estimate: '7.00' })];
    expect(ends(position('floor', '2025-05-03', { parts }).forecast)).toEqual([
      29_200, 29_200, 29_200,
    ]);
  });

  test('goes from what is committed to the budget while fewer than two phases are finished', () => {
    // Strip is finished since 12 March, floor is not.
    const floor = position('floor', '2025-04-10');
    expect(floor.forecast.rule).toBe('to budget');
    expect(ends(floor.forecast)).toEqual([28_500, 30_000, 30_000]);
    expect(forecastRule(figuresOn(lists, '2025-04-10'), wordsOf('en'))).toContain(
      'one phase with a budget',
    );
  });

  test('of a phase without a budget is what is committed', () => {
    const budgets = lists.budgets.slice(0, 2);
    const paint = position('paint', '2025-05-03', { budgets });
    expect(ends(paint.forecast)).toEqual([14_000, 15_000, 20_000]);
    expect(paint.over).toBeUndefined();
  });

  test('in all is the sum of its parts, end by end, and takes from the contingency what it exceeds the lines by', () => {
    const { total, contingency } = figuresOn(lists, '2025-05-03');
    // 110 + 285 + (380, 410, 440); lines 800.
    expect(ends(total.forecast)).toEqual([77_500, 80_500, 83_500]);
    expect(contingency && ends(contingency.used)).toEqual([0, 500, 3_500]);
    expect(contingency?.left.minor).toBe(2_500);
  });

  test('with lines by category lies between what is committed and the budget', () => {
    const budgets = [{ id: 'b-1', date: '2025-01-01', amount: '700.00', category: 'part' }];
    const figures = figuresOn({ ...lists, budgets }, '2025-05-03');
    // 110 + 285 + 50 spent, 60 owed, 40 (30 to 90) to buy.
    expect(figures.positions.map(({ key }) => key)).toEqual(['part']);
    expect(ends(figures.total.forecast)).toEqual([53_500, 70_000, 70_000]);
    expect(figures.overrun).toBeUndefined();
    expect(forecastRule(figures, wordsOf('en'))).toContain('by category');
  });

  test('of a finished project is what it cost', () => {
    const project = { status: 'finished', finished: '2025-05-03' };
    const { total } = figuresOn({ ...lists, parts: [], orders: [] }, '2025-05-03', project);
    expect(ends(total.forecast)).toEqual([44_500, 44_500, 44_500]);
  });

  test('says its arithmetic in words', () => {
    const { overrun } = figuresOn(lists, '2025-05-03');
    const words = (key: string) => forecastWords(position(key, '2025-05-03'), overrun, 'en-GB');
    expect(words('paint')).toEqual([
      'Committed: spent £50.00 + ordered £60.00 + still to buy £40.00 (£30.00 to £90.00) = £150.00.',
      'Low: the greater of £140.00 and £400.00 × 95.0% = £380.00: £380.00.',
      'Middle: the greater of £150.00 and £400.00 × 102.5% = £410.00: £410.00.',
      'High: the greater of £200.00 and £400.00 × 110.0% = £440.00: £440.00.',
    ]);
    expect(words('floor')).toEqual([
      'Committed: spent £285.00 + ordered £0.00 + still to buy £0.00 = £285.00.',
      'Finished, so it will cost what is committed.',
    ]);
  });
});

test('the ratio of a phase is exact: a third is not 33 %', () => {
  const thirds = {
    budgets: [
      line('b-1', '2025-01-01', '3.00', 'strip'),
      line('b-2', '2025-01-01', '3.00', 'floor'),
      line('b-3', '2025-01-01', '300000.00', 'paint'),
    ],
    costs: [cost('c-1', '2025-03-05', '1.00', 'strip'), cost('c-2', '2025-04-02', '1.00', 'floor')],
  };
  const [, , paint] = figuresOn(thirds, '2025-05-01').positions;
  expect(paint && ends(paint.forecast)).toEqual([10_000_000, 10_000_000, 10_000_000]);
});
