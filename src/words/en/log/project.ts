import { counted } from '../../counted.ts';

/** The sheet of a project. */
export const project = {
  document: 'Project sheet',
  wantedFeed: (project: string) => `${project}: wanted`,
  standing: 'Where it stands',
  finishedOn: (day: string) => `Finished on ${day}.`,
  asOf: (day: string) => `As of ${day}, the day of the newest row.`,
  underWay: 'Under way: {phases}.',
  hours: 'Hours worked',
  money: 'Money spent, credits taken off',
  partsKnown: 'Parts known',
  partsWanted: 'Parts wanted',
  specs: 'Specs measured',
  taken: '{ledger}, or print {dossier}, the whole record in one document.',
  downloadLedger: 'Download the ledger',
  theDossier: 'the dossier',
  ledgerIsMarked:
    "The ledger is {marked}: a row that was published can't be changed quietly, and you can check that yourself.",
  marked: 'marked',
  phases: 'Phases',
  plan: 'The plan, and what blocks what',
  changes: 'Before and after',
  moneyOverTime: 'Money over time',
  spending: 'Wide: spent, credits taken off. The rows are on the {costs}.',
  spendingAndBudget:
    'Wide: spent, credits taken off. The rows are on the {costs}, and what was planned is in the {budget}.',
  costSheet: 'cost sheet',
  budget: 'budget',
  sources: 'Where the parts came from',
  decided:
    'What was found on them: {survey}. What else there was, and why each was taken: {choices}.',
  survey: 'the condition survey',
  choices: 'the choices',
  newest: 'Newest entries',
  whole: (count: number) => `The whole log, ${counted(count, 'entry', 'entries')}`,
};
