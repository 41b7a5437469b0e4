import type { BudgetCurve, DayAmount } from '../cost/budget-curve.ts';
import { exponentOf } from '../money/currency.ts';
import { type Money, showMoney } from '../money/money.ts';
import { type Day, daysBetween, showShortDay } from '../time/day.ts';
import { wordsOf } from '../words/words.ts';
import { linearScale, roundTicks, type Scale } from './scale.ts';
import { across, type Drawing, fluidDrawing, node, type SvgNode } from './svg.ts';
import { showWhole } from './whole-money.ts';

const HEIGHT = 264;
const TOP = 30;
const BOTTOM = 230;
/** The curves start here, in per cent; the amounts lie on their lines, left of it. */
const LEFT = 17;
/** Ends of a forecast that lie closer than this, in pixels, would look like one wide line. */
const APART = 6;

interface Plane {
  readonly place: (day: Day) => number;
  readonly down: Scale;
}

/**
 * Money over time, from zero (or below it, where credits are more than was spent):
 *
 *        - - - - - -+            budget in force, dashed, stepped
 *     - - - -+     . - - -       planned spending, dashed, sloping
 *          . -   ====            spent, wide, stepped
 *      . - ======|  <  forecast from today: low and high narrow, the middle dashed
 */
export function drawBudgetCurve(curve: BudgetCurve, currency: string, language: string): Drawing {
  const days = Math.max(1, daysBetween(curve.from, curve.end));
  const [least, most] = extent(curve, currency);
  const air = (most - least) * 0.05;
  const plane: Plane = {
    place: (day) => LEFT + (daysBetween(curve.from, day) / days) * (100 - LEFT),
    down: linearScale([least < 0 ? least - air : 0, most + air], [BOTTOM, TOP]),
  };
  return fluidDrawing(HEIGHT, titleOf(curve, language), [
    ...scaleLines(plane, [least, most], currency, language),
    ...dayLabels(curve, plane, language),
    ...stepped(curve.budget, plane, { until: curve.end, kind: 'planned' }),
    ...sloping(curve.planned, plane),
    ...stepped(curve.spent, plane, { until: curve.today, kind: 'wide' }),
    ...forecastLines(curve, plane, currency),
  ]);
}

/** Zero is always in it, and so is everything drawn. */
function extent(
  { budget, planned, spent, forecast }: BudgetCurve,
  currency: string,
): readonly [number, number] {
  const drawn = [...budget, ...planned, ...spent].map(({ money }) => money.minor);
  const ends = forecast ? [forecast.low.minor, forecast.high.minor] : [];
  const wholeUnits = 4 * 10 ** (exponentOf(currency) ?? 0);
  const least = Math.min(0, ...drawn, ...ends);
  const most = Math.max(0, ...drawn, ...ends);
  return [least, Math.max(most, least + wholeUnits)];
}

function scaleLines(
  { down }: Plane,
  [least, most]: readonly [number, number],
  currency: string,
  language: string,
): SvgNode[] {
  return roundTicks([least, most], 4).flatMap((minor) => [
    node('line', {
      ...{ x1: '0%', x2: '100%', y1: down(minor), y2: down(minor) },
      class: minor === 0 && least < 0 ? 'narrow' : 'grid',
    }),
    node(
      'text',
      { x: '0%', y: down(minor) - 4, class: 'small' },
      showWhole({ minor, currency }, language),
    ),
  ]);
}

/** The day that is looked at stands above its line, so that it never meets the first and the last below. */
function dayLabels(curve: BudgetCurve, { place }: Plane, language: string): SvgNode[] {
  const today = place(curve.today);
  const x = across(today);
  const label = (words: string, at: Record<string, string | number>) =>
    node('text', { ...at, class: 'small' }, words);
  const last = curve.endIsPlanned
    ? [
        label(showShortDay(curve.end, language), {
          ...{ x: '100%', y: HEIGHT - 10, 'text-anchor': 'end' },
        }),
      ]
    : [];
  return [
    node('line', { x1: x, x2: x, y1: TOP - 8, y2: BOTTOM, class: 'centre' }),
    label(showShortDay(curve.today, language), { x, y: 14, 'text-anchor': anchorAt(today) }),
    label(showShortDay(curve.from, language), { x: across(LEFT), y: HEIGHT - 10 }),
    ...last,
  ];
}

function anchorAt(percent: number): string {
  if (percent < 30) return 'start';
  return percent > 70 ? 'end' : 'middle';
}

interface StepStyle {
  readonly until: Day;
  readonly kind: 'wide' | 'planned';
}

function stepped(amounts: readonly DayAmount[], plane: Plane, { until, kind }: StepStyle) {
  const { place, down } = plane;
  return amounts.flatMap(({ day, money }, index) => {
    const [from, to] = [across(place(day)), across(place(amounts[index + 1]?.day ?? until))];
    const [before, now] = [down(amounts[index - 1]?.money.minor ?? 0), down(money.minor)];
    return [
      node('line', { x1: from, x2: from, y1: before, y2: now, class: kind }),
      node('line', { x1: from, x2: to, y1: now, y2: now, class: kind }),
    ];
  });
}

function sloping(amounts: readonly DayAmount[], plane: Plane): SvgNode[] {
  return amounts.slice(1).map((to, index) => slope(amounts[index] ?? to, to, plane, 'planned'));
}

function slope(from: DayAmount, to: DayAmount, { place, down }: Plane, kind: string): SvgNode {
  return node('line', {
    ...{ x1: across(place(from.day)), x2: across(place(to.day)) },
    ...{ y1: down(from.money.minor), y2: down(to.money.minor) },
    class: kind,
  });
}

function forecastLines(curve: BudgetCurve, plane: Plane, currency: string): SvgNode[] {
  const { forecast, today, end } = curve;
  if (forecast === undefined) return [];
  const money = curve.spent.at(-1)?.money ?? { minor: 0, currency };
  const to = (amount: Money, kind: string) =>
    slope({ day: today, money }, { day: end, money: amount }, plane, kind);
  const middle = to(forecast.middle, 'planned');
  if (plane.down(forecast.low.minor) - plane.down(forecast.high.minor) < APART) return [middle];
  return [
    to(forecast.low, 'narrow'),
    middle,
    to(forecast.high, 'narrow'),
    slope({ day: end, money: forecast.low }, { day: end, money: forecast.high }, plane, 'narrow'),
  ];
}

function titleOf({ from, today, budget, spent, forecast }: BudgetCurve, language: string): string {
  const words = wordsOf(language).money.budget.curve;
  const show = (money: Money | undefined) => (money ? showMoney(money, language) : words.nothing);
  const given = {
    from: showShortDay(from, language),
    today: showShortDay(today, language),
    budget: show(budget.at(-1)?.money),
    spent: show(spent.at(-1)?.money),
  };
  if (forecast === undefined) return words.title(given);
  return words.titleWithForecast({
    ...given,
    low: show(forecast.low),
    high: show(forecast.high),
  });
}
