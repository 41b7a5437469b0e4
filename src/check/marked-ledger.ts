import type { LedgerMarks } from '../mark/ledger-marks.ts';
import type { FoundRow } from '../mark/ledger-rows.ts';
import type { MarkedRow } from '../mark/marked-rows.ts';
import type { ReadProject } from '../read/content.ts';
import type { Day } from '../time/day.ts';

/** Today's ledger beside the marked one. */
export interface MarkedLedger {
  readonly project: ReadProject;
  readonly today: Day;
  readonly marks: LedgerMarks;
  readonly rows: readonly FoundRow[];
  readonly found: ReadonlyMap<string, FoundRow>;
  readonly marked: ReadonlyMap<string, Marked>;
}

/** What a row was first marked as, and last; most have one mark. */
export interface Marked {
  readonly first: MarkedRow;
  readonly last: MarkedRow;
}
