/** The cost sheet and its tables. */
export const costs = {
  title: 'Costs',
  description: (project: string) =>
    `Every cost row of ${project}, with totals by category, phase and source.`,
  document: 'Cost ledger',
  lead: (how: string, tools: string) =>
    `{total}, ${how}. Shop tools are ${tools}; the builder's own work is not. {corrections} stay visible, struck. What is not counted is {apart}.`,
  leadWithBudget: (how: string, tools: string) =>
    `{total}, ${how}. Shop tools are ${tools}; the builder's own work is not. {corrections} stay visible, struck. What is not counted is {apart}. What was planned, and what is still to come, is in the {budget}.`,
  corrections: 'Corrections',
  shownApart: 'shown apart',
  budget: 'budget',
  tools: {
    in: 'counted',
    out: 'not counted',
    percent: (percent: string) => `counted at ${percent} %`,
  },
  download: 'Download the ledger',
  spending: 'Wide: spent, credits taken off. Every step is a row below.',
  spendingTitle: (from: string, to: string, spent: string) =>
    `Money spent from ${from} to ${to}, credits taken off: ${spent}.`,
  byCategory: 'By category',
  byPhase: 'By phase',
  bySource: 'By source',
  really: 'What things really cost',
  byPart: 'Costs by part',
  donorAccount: 'Donor account: {donor}',
  allRows: 'All rows',
  allRowsRule:
    "In order of date, with the running total. An entry's running total is the one in the last row of its day, unless a row was corrected since: an entry counts what stood on its day.",
  allRowsLabel: 'All cost rows',
  rowsLabel: 'Cost rows',
  category: 'Category',
  running: 'Running',
  ofItTax: (tax: string) => `${tax} of it tax`,
  forOtherWork: (amount: string) => `${amount} for other work`,
  notCounted: 'not counted',
  rates: {
    title: 'Recorded exchange rates',
    rule: 'An amount in another currency counts at the newest rate on or before its day, rounded half away from zero to whole pence or cents.',
    label: 'Exchange rates',
    rate: 'Rate',
    read: 'Where it was read',
  },
  perHour: {
    title: 'Per hour',
    rule: 'Money divided by hours worked, in each phase; rounded half away from zero to whole pence or cents.',
    label: 'Money per hour',
    money: 'Money',
    all: 'All',
  },
  apart: {
    title: 'Shown apart',
    gifts: 'Gifts, at their stated value',
    trades: 'Got in trade, at its stated value',
    toolsOut: 'Shop tools left out',
    elsewhere: 'Shares for other work',
    counted: 'counted, by rule of the project',
    notCounted: 'not counted',
    labour: 'Own labour',
    labourRule: (hours: string, person: string, rate: string) =>
      `${hours} of ${person} at ${rate} an hour; never in the money spent`,
    noRate: 'no rate is stated',
  },
  believed: {
    label: 'Entries that show what was believed then',
    runsTo: 'The ledger runs up to',
    less: 'Less, written down later',
    and: 'And, replaced later',
    shows: 'The entry shows',
  },
};
