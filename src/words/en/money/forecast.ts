const least =
  'Committed is what is spent, ordered and still to buy. What is finished, and what has no budget, costs what is committed.';

/** How a forecast of costs came about, and the rule that forecasts go by. */
export const forecast = {
  committed: (given: { spent: string; ordered: string; toBuy: string; sum: string }) =>
    `Committed: spent ${given.spent} + ordered ${given.ordered} + still to buy ${given.toBuy} = ${given.sum}.`,
  toBuyBetween: (amount: string, range: string) => `${amount} (${range})`,
  finished: 'Finished, so it will cost what is committed.',
  noBudget: 'It has no budget, so nothing beyond what is committed is foreseen.',
  upToBudget: (budget: string) =>
    `From what is committed at the least up to the budget, ${budget}, if that is more.`,
  ends: { low: 'Low', middle: 'Middle', high: 'High' },
  greaterOf: (given: {
    end: string;
    least: string;
    budget: string;
    ratio: string;
    product: string;
    most: string;
  }) =>
    `${given.end}: the greater of ${given.least} and ${given.budget} × ${given.ratio} = ${given.product}: ${given.most}.`,
  rule: {
    byCategory: `${least} All else lies between what is committed and its budget, if that is more: lines are by category, and no category is ever finished before the whole. Over budget is the middle less the budget.`,
    tooFew: (finished: number) =>
      `${least} All else lies between what is committed and its budget, if that is more: ${finished === 1 ? 'one phase' : 'no phase'} with a budget is finished so far, and it takes two to know a habit. Over budget is the middle less the budget.`,
    byHabit: (phases: number) =>
      `${least} All else costs that at the least, and otherwise its budget times spent over budget of the ${phases} finished phases: the smallest ratio for the low end, the median for the middle, the largest for the high end. Over budget is the middle less the budget.`,
  },
};
