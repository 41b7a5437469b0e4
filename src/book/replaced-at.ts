import type { Correction } from '../ledger/corrections.ts';
import { findRow } from '../ledger/find-row.ts';
import type { Project } from './types.ts';

/** What was said of a row, or of the rate that its amount was converted at, and what it was itself put in the place of. */
export interface ReplacedAt {
  readonly gone: Correction | undefined;
  readonly instead: Correction | undefined;
}

/** Looks for the corrections of a row; of those of the row and of its rate the earlier one is told. */
export function replacedAt(
  { corrections }: Project,
  id: string,
  rate: string | undefined,
): ReplacedAt {
  const own = findRow(corrections, id, oldId);
  const ofRate = rate === undefined ? undefined : findRow(corrections, rate, oldId);
  const both = own !== undefined && ofRate !== undefined;
  const gone = both && corrections.indexOf(ofRate) < corrections.indexOf(own) ? ofRate : own;
  return { gone: gone ?? ofRate, instead: findRow(corrections, id, newId) };
}

const oldId = ({ old }: Correction): string => old;
const newId = ({ by }: Correction): string => by ?? '';
