import type { Day } from '../time/day.ts';
import type { Words } from '../words/words.ts';
import type { PreparationKind } from './preparations.ts';

/** What happened to a part in one step. */
export type StepKind = keyof Words['parts']['part']['steps'];

/** One dated step of a part. */
export interface ChainStep {
  readonly what: StepKind;
  readonly date: Day;
  /** Id of the ledger row that says so; undefined for a machine that came with the part on it. */
  readonly row: string | undefined;
  /** Whole days since the step before; undefined for the first. */
  readonly days: number | undefined;
  /** What the row says in the builder's words; the machine's name where it was found on one. */
  readonly note?: string | undefined;
  readonly preparation?: PreparationKind;
}

/** A step before its place in the chain is known. */
export type LooseStep = Omit<ChainStep, 'days'>;
