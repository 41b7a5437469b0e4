import { type RowKind, rowKinds } from '../model/kinds.ts';
import type { ReadProject } from '../read/content.ts';
import type { RawRecord } from '../read/raw.ts';
import { type Day, earliestDay } from '../time/day.ts';
import { factsOfField } from './written-fields.ts';

/** A row of today's ledger and where it stands. */
export interface FoundRow {
  readonly kind: RowKind;
  readonly id: string;
  readonly raw: RawRecord;
  readonly file: string;
  /** The day it was recorded, as far as the row tells. */
  readonly day: Day | undefined;
}

/** All rows of the ledger, file after file. */
export function ledgerRows({ lists }: ReadProject): FoundRow[] {
  return rowKinds.flatMap((kind) =>
    lists[kind].map(({ value, raw }) => ({
      kind,
      id: value.id,
      raw,
      file: raw.placeOf(['id']).file,
      day: recordedOn(kind, value),
    })),
  );
}

/** `recorded`, or the day it is about; a part, which has neither, the first of its dated steps. */
function recordedOn(kind: RowKind, value: object): Day | undefined {
  const { recorded, date } = value as { recorded?: Day; date?: Day };
  if (kind !== 'parts') return recorded ?? date;
  const steps = Object.entries(value).filter(([name]) => factsOfField(kind, dashed(name))?.day);
  return recorded ?? earliestDay(steps.map(([, day]) => day as Day | undefined));
}

/** `forSale` → `for-sale`, the name in the file. */
function dashed(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

/**
 * The rows in order of recording: files are merged by day, and each keeps its own order. A row that has no day, or an earlier one than
 * the row above it, goes by the row above; rows of one day come by kind, then by file.
 */
export function inOrderOfRecording(rows: readonly FoundRow[]): FoundRow[] {
  const latest = new Map<string, string>();
  const keyed = rows.map((row) => {
    const above = latest.get(row.file) ?? '';
    const key = row.day !== undefined && row.day > above ? row.day : above;
    latest.set(row.file, key);
    return { row, key };
  });
  // The sort is stable, so that rows of one day keep the order they came in.
  return keyed.sort((a, b) => Number(a.key > b.key) - Number(a.key < b.key)).map(({ row }) => row);
}
