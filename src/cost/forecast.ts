import { type Money, sum } from '../money/money.ts';
import { certain, type MoneyRange } from './amount-row.ts';
import { type Overrun, scaled } from './overrun.ts';

/** What a forecast is made of. */
export interface ForecastParts {
  readonly spent: Money;
  readonly ordered: Money;
  readonly toBuy: MoneyRange;
  readonly budget: Money | undefined;
  /** Whether the work is over, so that nothing but what is committed will come. */
  readonly finished: boolean;
  /** How finished phases compared with their budgets; undefined where that can't be said. */
  readonly overrun: Overrun | undefined;
}

/** What something will have cost when it is done, and by which rule that was reckoned. */
export interface Forecast extends MoneyRange {
  /** Spent, ordered and still to buy, together. */
  readonly committed: MoneyRange;
  /** The budget at the builder's own smallest, median and largest ratio; undefined where the rule has no use for it. */
  readonly byHabit: MoneyRange | undefined;
  readonly rule: 'finished' | 'no budget' | 'to budget' | 'by habit';
}

/**
 * Forecast at completion. What is finished costs what is committed, and so does what has no budget. All else costs at least that,
 * and otherwise its budget times what finished phases cost for each unit of theirs: the smallest, the median, the largest.
 * Without such phases it lies between what is committed and the budget.
 */
export function forecastOf(parts: ForecastParts): Forecast {
  const committed = committedOf(parts);
  const { budget, finished, overrun } = parts;
  if (finished) return { ...committed, committed, byHabit: undefined, rule: 'finished' };
  if (budget === undefined)
    return { ...committed, committed, byHabit: undefined, rule: 'no budget' };
  if (overrun === undefined) {
    const range = { ...atLeast(committed, certain(budget)), low: committed.low };
    return { ...range, committed, byHabit: undefined, rule: 'to budget' };
  }
  const byHabit = {
    low: scaled(budget, overrun.smallest),
    middle: scaled(budget, overrun.median),
    high: scaled(budget, overrun.largest),
  };
  return { ...atLeast(committed, byHabit), committed, byHabit, rule: 'by habit' };
}

function committedOf({ spent, ordered, toBuy }: ForecastParts): MoneyRange {
  const andStill = (still: Money) => sum([spent, ordered, still], spent.currency);
  return { low: andStill(toBuy.low), middle: andStill(toBuy.middle), high: andStill(toBuy.high) };
}

/** The greater of two ranges, end by end. */
function atLeast(least: MoneyRange, other: MoneyRange): MoneyRange {
  const greater = (end: keyof MoneyRange) =>
    other[end].minor > least[end].minor ? other[end] : least[end];
  return { low: greater('low'), middle: greater('middle'), high: greater('high') };
}
