import { describe, expect, test } from 'vitest';
import { budgetCurve, monthEnds } from '../../src/cost/budget-curve.ts';
import { budgetFigures } from '../../src/cost/budget-figures.ts';
import { drawBudgetCurve } from '../../src/draw/budget-curve.ts';
import { type Drawing, type SvgNode, writeSvg } from '../../src/draw/svg.ts';
import type { Day } from '../../src/time/day.ts';
import { projectOf, type Written } from '../book/project-of.ts';
import { cost, line, phases, sources } from './budget-project.ts';

const budgets = [
  line('b-1', '2025-02-01', '100.00', 'strip'),
  line('b-2', '2025-02-01', '300.00', 'paint'),
  line('b-3', '2025-03-05', '140.00', 'strip', { because: 'Rust' }),
];
const curveOf = (costs: readonly Written[], day: string) => {
  const view = projectOf({ lists: { phases, sources, budgets, costs } }).asOf(day as Day);
  const figures = budgetFigures(view);
  const curve = budgetCurve(view, figures);
  return { curve, months: monthEnds(curve, view, figures) };
};
const gbp = (minor: number) => ({ minor, currency: 'GBP' });
const points = (amounts: readonly { day: Day; money: { minor: number } }[]) =>
  amounts.map(({ day, money }) => [day, money.minor]);

describe('the curve of the budget', () => {
  const costs = [
    cost('c-1', '2025-03-02', '60.00', 'strip'),
    cost('c-2', '2025-03-06', '50.00', 'strip'),
  ];
  const { curve, months } = curveOf(costs, '2025-03-06');

  test('steps with the lines in force', () => {
    expect(points(curve.budget)).toEqual([
      ['2025-02-01', 40_000],
      ['2025-03-05', 44_000],
    ]);
  });

  test('spends each line evenly between the planned days of its phase', () => {
    expect(points(curve.planned)).toEqual([
      ['2025-03-01', 0],
      ['2025-03-11', 14_000],
      ['2025-06-01', 14_000],
      ['2025-06-11', 44_000],
    ]);
    // 6 March is half way through strip.
    expect(months.find(({ day }) => day === '2025-03-06')?.planned?.minor).toBe(7_000);
  });

  test('adds up what was spent, and ends at the last planned finish', () => {
    expect(points(curve.spent)).toEqual([
      ['2025-03-02', 6_000],
      ['2025-03-06', 11_000],
    ]);
    expect([curve.end, curve.endIsPlanned]).toEqual(['2025-06-11', true]);
  });

  test('has its numbers at the end of each month; what is to come has nothing spent', () => {
    expect(
      months.map(({ day, budget, planned, spent }) => [
        ...[day, budget.minor, planned?.minor, spent?.minor],
      ]),
    ).toEqual([
      ['2025-02-28', 40_000, 0, 0],
      ['2025-03-06', 44_000, 7_000, 11_000],
      ['2025-03-31', 44_000, 14_000, undefined],
      ['2025-04-30', 44_000, 14_000, undefined],
      ['2025-05-31', 44_000, 14_000, undefined],
      ['2025-06-11', 44_000, 44_000, undefined],
    ]);
  });

  test('ends a little after today when the plan has run out', () => {
    const late = curveOf(costs, '2025-07-01').curve;
    expect([late.end > '2025-07-01', late.endIsPlanned]).toEqual([true, false]);
  });
});

describe('the drawing of the curve', () => {
  const heights = ({ attributes, children }: SvgNode): number[] => [
    ...[attributes.y1, attributes.y2].filter((y) => typeof y === 'number'),
    ...children.flatMap((child) => (typeof child === 'string' ? [] : heights(child))),
  ];

  test('keeps credits that are more than what was spent inside its frame, above the days', () => {
    const sold = [
      cost('c-1', '2025-02-10', '90.00', 'strip', { kind: 'sale' }),
      cost('c-2', '2025-03-01', '500.00', 'strip', { kind: 'sale' }),
    ];
    const { root } = drawBudgetCurve(curveOf(sold, '2025-03-06').curve, 'GBP', 'en-GB');
    expect(Math.max(...heights(root))).toBeLessThanOrEqual(230);
    expect(Math.min(...heights(root))).toBeGreaterThanOrEqual(20);
    expect(writeSvg(root)).toContain('−£500');
  });

  test('of nothing spent and nothing allowed is still a drawing', () => {
    const view = projectOf({ lists: { phases, sources } }).asOf('2025-03-06' as Day);
    const curve = budgetCurve(view, budgetFigures(view));
    const { root } = drawBudgetCurve(curve, 'GBP', 'en-GB');
    expect(heights(root).every(Number.isFinite)).toBe(true);
    expect(writeSvg(root)).not.toContain('NaN');
  });
});

test('a plan that begins before the first row is drawn from its beginning', () => {
  const { curve } = curveOf([cost('c-1', '2025-06-05', '9.00', 'paint')], '2025-06-05');
  expect(curve.from <= (curve.planned[0]?.day ?? '')).toBe(true);
});

test('a forecast whose ends lie too close to draw is one dashed line, and never looks like money spent', () => {
  const { curve } = curveOf([cost('c-1', '2025-03-02', '60.00', 'strip')], '2025-03-06');
  const close = {
    ...curve,
    forecast: { low: gbp(44_000), middle: gbp(44_100), high: gbp(44_200) },
  };
  const apart = { ...close, forecast: { ...close.forecast, high: gbp(60_000) } };
  const narrow = ({ root }: Drawing) => writeSvg(root).split('class="narrow"').length - 1;
  const drawn = (some: typeof curve) => narrow(drawBudgetCurve(some, 'GBP', 'en-GB'));
  // Low, high and the line that joins them.
  expect([drawn(apart), drawn(close)]).toEqual([3, 0]);
});
