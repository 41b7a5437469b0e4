import { columns } from './marks/columns.ts';
import { data } from './marks/data.ts';
import { page } from './marks/page.ts';
import { tables } from './marks/tables.ts';

/** Marks, corrections, what is withheld, and the downloads. */
export const marks = {
  page,
  data,
  tables,
  columns,
  table: { label: 'Marks', rows: 'Rows', root: 'Root', signedBy: 'Signed by' },
  /** The number is shown already; the count decides between one and many. */
  rows: (shown: string, count: number) => `${shown} ${count === 1 ? 'row' : 'rows'}`,
  ownKey: 'the key below',
  nobody: 'nobody',
  withheld: 'withheld',
  withheldTogether: (rows: number) =>
    `${rows === 1 ? '1 row' : `${rows} rows`} whose amounts are withheld, together`,
  withheldNote: (rows: number) =>
    rows === 1
      ? '1 row whose amount is withheld is not told by machine or part, and stands with what names neither.'
      : `${rows} rows whose amounts are withheld are not told by machine or part, and stand with what names neither.`,
  replaced: {
    by: 'replaced by {row} on {day}: {because}',
    withdrawn: 'withdrawn by {row} on {day}: {because}',
    rateBy: 'its rate replaced by {row} on {day}: {because}',
    rateWithdrawn: 'its rate withdrawn by {row} on {day}: {because}',
    replaces: 'replaces {row}: {because}',
  },
  corrections: {
    title: 'Corrections',
    description: (project: string) =>
      `Rows of ${project} that were wrong, what counts in their place, and why.`,
    none: 'No row of this ledger has been corrected or withdrawn so far.',
    count: (rows: number) =>
      `${rows} ${rows === 1 ? 'row was' : 'rows were'} corrected or withdrawn.`,
    rule: 'Nothing that was published is edited or removed. A row that was wrong stays where it stood, struck; another row names it, says why, and counts from the day it was written down. An entry of an earlier day still shows what was believed on that day.',
    believed: 'Entries that show what was believed then',
    believedRule:
      'From the total that the ledger page of today runs up to by the day of the entry to the one that the entry shows.',
    said: 'Said',
    was: 'Row as it was',
    now: 'What counts now',
    effect: 'Effect on the total',
    nothing: 'nothing: it was withdrawn',
    noEffect: 'none',
  },
};
