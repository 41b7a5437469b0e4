import type { ReadProject } from '../read/content.ts';
import type { Day } from '../time/day.ts';
import { rowText } from '../trust/row-hash.ts';
import { compareRow, isGrowth } from './compare.ts';
import { type FoundRow, inOrderOfRecording, ledgerRows } from './ledger-rows.ts';
import type { MarkedRow } from './marked-rows.ts';
import { type Secret, saltOf, secretOf } from './salts.ts';
import { writtenFields } from './written-fields.ts';

/** What the next mark adds. */
export interface NextRows {
  /** The lines of `marked-rows.jsonl` to add, in order. */
  readonly texts: readonly string[];
  /** How many of them are rows that were marked before and have grown. */
  readonly grown: number;
}

/**
 * The rows that no mark has yet, in order of recording, and the rows that have grown since they were marked.
 * Rows and steps that are dated after the day of the mark are left for the next.
 */
export function nextRows(
  project: ReadProject,
  marked: readonly MarkedRow[],
  { day, secrets }: { readonly day: Day; readonly secrets: readonly Secret[] },
): NextRows {
  const latest = new Map(marked.map((row) => [row.id, row]));
  const options = { hashes: project.marks.hashes, until: day };
  const texts: string[] = [];
  let grown = 0;
  for (const row of inOrderOfRecording(ledgerRows(project))) {
    if (row.day !== undefined && row.day > day) continue;
    const fields = writtenFields(row.kind, row.raw, options);
    const before = latest.get(row.id);
    const change = before && compareRow(row, fields, before, secrets);
    if (before && !(change && isGrowth(row, change))) continue;

    if (before) grown++;
    const serial = marked.length + texts.length + 1;
    texts.push(rowText({ ...named(row), ...fields, serial, salt: salt(row, serial, secrets) }));
  }
  return { texts, grown };
}

function named({ kind, id }: FoundRow) {
  return { kind, id };
}

function salt({ kind, id }: FoundRow, serial: number, secrets: readonly Secret[]) {
  const secret = secretOf(serial, secrets);
  return secret && saltOf(secret, kind, id);
}
