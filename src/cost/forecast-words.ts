import { type Money, showMoney } from '../money/money.ts';
import { type Words, wordsOf } from '../words/words.ts';
import type { BudgetFigures, BudgetPosition } from './budget-figures.ts';
import { type Overrun, showRatio } from './overrun.ts';

/** Amounts as a reader sees them, a range as one amount where its ends are the same. */
export function showRange(low: Money, high: Money, language: string): string {
  const first = showMoney(low, language);
  if (low.minor === high.minor) return first;
  return wordsOf(language).money.range(first, showMoney(high, language));
}

/** How the forecast of a phase or category came about, a sentence a line. */
export function forecastWords(
  position: BudgetPosition,
  overrun: Overrun | undefined,
  language: string,
): string[] {
  const words = wordsOf(language).money.forecast;
  const { budget, forecast } = position;
  const { byHabit, rule } = forecast;
  const sum = committedWords(position, language);
  if (rule === 'finished') return [sum, words.finished];
  if (rule === 'no budget' || budget === undefined) return [sum, words.noBudget];
  const allowed = showMoney(budget.value, language);
  if (byHabit === undefined || overrun === undefined) return [sum, words.upToBudget(allowed)];
  const ratios = { low: overrun.smallest, middle: overrun.median, high: overrun.largest };
  const line = (end: keyof typeof ratios) =>
    words.greaterOf({
      end: words.ends[end],
      least: showMoney(forecast.committed[end], language),
      budget: allowed,
      ratio: showRatio(ratios[end], language),
      product: showMoney(byHabit[end], language),
      most: showMoney(forecast[end], language),
    });
  return [sum, line('low'), line('middle'), line('high')];
}

function committedWords(
  { spent, ordered, toBuy, toBuyRange: { low, high }, forecast }: BudgetPosition,
  language: string,
): string {
  const words = wordsOf(language).money.forecast;
  const still = showMoney(toBuy.value, language);
  return words.committed({
    spent: showMoney(spent.value, language),
    ordered: showMoney(ordered.value, language),
    toBuy:
      low.minor === high.minor ? still : words.toBuyBetween(still, showRange(low, high, language)),
    sum: showMoney(forecast.committed.middle, language),
  });
}

/** The rule that the forecasts of a project go by on a day, in a few sentences. */
export function forecastRule(
  { budget, overrun, positions }: BudgetFigures,
  { money }: Words,
): string {
  const { rule } = money.forecast;
  if (budget.by === 'category') return rule.byCategory;
  if (overrun) return rule.byHabit(overrun.phases.length);
  return rule.tooFew(positions.filter((item) => item.finished && item.budget).length);
}
