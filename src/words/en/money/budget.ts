/** The budget: what was allowed, what is spent, what is still to come. */
export const budget = {
  title: 'Budget',
  description: (project: string) =>
    `What ${project} may cost, has cost and will cost, with how each sum came about.`,
  document: 'Budget',
  lead: 'What was allowed, what is spent, and what is still to come. Amounts in parentheses rest on estimates. All cost rows are on the {costs}.',
  costSheet: 'cost sheet',
  overTime: 'Over time',
  by: { phase: 'By phase', category: 'By category' },
  positionsLabel: { phase: 'Budget by phase', category: 'Budget by category' },
  forecastTitle: 'How the forecast is made',
  changesTitle: 'How the budget changed',
  changesRule: {
    phase:
      'In order of date. A line holds until a later one for the same phase; the earlier stays as it was written.',
    category:
      'In order of date. A line holds until a later one for the same category; the earlier stays as it was written.',
  },
  inEntry: {
    label: 'Budget',
    more: 'How each sum is made up, phase by phase, is on the {page}, as of today.',
    page: 'budget page',
  },
  columns: {
    budget: 'Budget',
    spent: 'Spent',
    ordered: 'Ordered',
    toBuy: 'Still to buy',
    forecast: 'Forecast',
    over: 'Over budget',
  },
  finished: 'finished',
  inAll: 'In all',
  noPhase: 'No phase',
  summary: {
    label: 'Budget',
    budget: 'Budget',
    spent: 'Spent, credits taken off',
    ordered: 'Ordered, not yet paid',
    toBuy: 'Still to buy, estimated',
    unpriced: (count: number) => `${count} more without an estimate`,
    forecast: 'Forecast when done, estimated',
    sumOfThese: 'Sum of these, end by end:',
    position: (name: string, middle: string, range: string) => `${name}: ${middle}, ${range}`,
    contingency: 'Contingency, kept for what nobody foresees',
    used: 'Of it the forecast would use',
    lessLines: (forecast: string, budget: string) =>
      `Forecast less budget lines, where that is above zero: ${forecast} − ${budget}.`,
    atItsEnds: (low: string, high: string) => `At its low and its high end: ${low} and ${high}.`,
    beyond: (amount: string) => `That is more than there is, by ${amount}.`,
    left: (amount: string) => `${amount} of it would be left.`,
  },
  changes: {
    label: 'Budget lines',
    for: 'For',
    change: 'Change',
    firstLine: 'first line',
  },
  habit: {
    label: 'Finished phases beside their budgets',
    phase: 'Finished phase',
    ratio: 'Spent / budget',
    median: 'Median',
  },
  curve: {
    spent: 'spent, credits taken off',
    budget: 'stepped: the budget, contingency not in it',
    planned: 'sloping: the budget, if each phase spent its own evenly between its planned days',
    forecast: (day: string) =>
      `forecast from ${day}: its middle dashed, low and high narrow where they lie apart`,
    endPlanned: (day: string) => `The forecast ends at the last planned finish, ${day}.`,
    endPassed: 'The last planned finish has passed, so the end of the forecast has no date.',
    inNumbers: 'The same in numbers',
    label: 'Budget and spending by month',
    atTheEndOf: 'At the end of',
    plannedSpending: 'Planned spending',
    whenDone: (low: string, middle: string, high: string) =>
      `Forecast when done: low (${low}), middle (${middle}), high (${high}).`,
    nothing: 'nothing',
    title: (given: { from: string; today: string; budget: string; spent: string }) =>
      `Money from ${given.from} to ${given.today}; budget ${given.budget}, dashed; spent ${given.spent}, wide.`,
    titleWithForecast: (given: {
      from: string;
      today: string;
      budget: string;
      spent: string;
      low: string;
      high: string;
    }) =>
      `Money from ${given.from} to ${given.today}; budget ${given.budget}, dashed; spent ${given.spent}, wide; forecast ${given.low} to ${given.high}, low to high.`,
  },
};
