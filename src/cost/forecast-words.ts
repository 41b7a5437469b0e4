import { type Money, showMoney } from '../money/money.ts';
import type { BudgetFigures, BudgetPosition } from './budget-figures.ts';
import { type Overrun, showRatio } from './overrun.ts';

/** Amounts as a reader sees them, a range as one amount where its ends are the same. */
export function showRange(low: Money, high: Money, language: string): string {
  const first = showMoney(low, language);
  return low.minor === high.minor ? first : `${first} to ${showMoney(high, language)}`;
}

/** How the forecast of a phase or category came about, a sentence a line. */
export function forecastWords(
  { spent, ordered, toBuy, toBuyRange, budget, forecast }: BudgetPosition,
  overrun: Overrun | undefined,
  language: string,
): string[] {
  const show = (money: Money) => showMoney(money, language);
  const { committed, byHabit, rule } = forecast;
  const range =
    toBuyRange.low.minor === toBuyRange.high.minor
      ? ''
      : ` (${showRange(toBuyRange.low, toBuyRange.high, language)})`;
  const sum = `Committed: spent ${show(spent.value)} + ordered ${show(ordered.value)} + still to buy ${show(toBuy.value)}${range} = ${show(committed.middle)}.`;
  if (rule === 'finished') return [sum, 'Finished, so it will cost what is committed.'];
  if (rule === 'no budget' || budget === undefined)
    return [sum, 'It has no budget, so nothing beyond what is committed is foreseen.'];
  if (byHabit === undefined || overrun === undefined)
    return [
      sum,
      `From what is committed at the least up to the budget, ${show(budget.value)}, if that is more.`,
    ];
  const line = (name: string, ratio: string, by: Money, least: Money, most: Money) =>
    `${name}: the greater of ${show(least)} and ${show(budget.value)} × ${ratio} = ${show(by)}: ${show(most)}.`;
  const percent = (which: 'smallest' | 'median' | 'largest') => showRatio(overrun[which], language);
  return [
    sum,
    line('Low', percent('smallest'), byHabit.low, committed.low, forecast.low),
    line('Middle', percent('median'), byHabit.middle, committed.middle, forecast.middle),
    line('High', percent('largest'), byHabit.high, committed.high, forecast.high),
  ];
}

/** The rule that the forecasts of a project go by on a day, in a sentence or two. */
export function forecastRule({ budget, overrun, positions }: BudgetFigures): string {
  const least =
    'Committed is what is spent, ordered and still to buy. What is finished, and what has no budget, costs what is committed.';
  if (budget.by === 'category')
    return `${least} All else lies between what is committed and its budget, if that is more: lines are by category, and no category is ever finished before the whole.`;
  if (overrun === undefined) {
    const count = positions.filter((item) => item.finished && item.budget).length;
    const phases = count === 1 ? 'one phase' : 'no phase';
    return `${least} All else lies between what is committed and its budget, if that is more: ${phases} with a budget is finished so far, and it takes two to know a habit.`;
  }
  return `${least} All else costs that at the least, and otherwise its budget times spent over budget of the ${overrun.phases.length} finished phases: the smallest ratio for the low end, the median for the middle, the largest for the high end.`;
}
