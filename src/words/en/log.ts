import { entry } from './log/entry.ts';
import { project } from './log/project.ts';
import { rows } from './log/rows.ts';
import { sharing } from './log/sharing.ts';

/** The log and its entries, the pages that lead to them, and what is passed on of them. */
export const log = {
  project,
  entry,
  rows,
  sharing,
  added: 'This entry added',
  money: 'Money',
  partsFitted: 'Parts fitted',
  readings: 'Readings',
  runningTotal: 'Running total',
  runningTotals: 'Running totals',
  totals: 'Totals',
  list: {
    title: 'Log',
    description: (project: string) => `All entries of the log of ${project}, in order.`,
    document: 'Log',
    lead: (count: number) => (count === 1 ? '1 entry.' : `${count} entries, the oldest first.`),
  },
  home: {
    description: (builder: string) => `Build logs by ${builder}`,
    document: 'Index of projects',
    finished: 'Finished',
    asOf: 'As of',
    entries: 'Entries',
    latest: 'Latest entries',
  },
  contact: {
    none: 'The builder has given no contact for answers.',
    write: 'Have one, or want one? Write to {contact}.',
  },
};
