import { type RowKind, rowKinds } from '../model/kinds.ts';
import type { RowFields } from '../trust/row-hash.ts';

/** A row as it was published under a mark: one line of `marked-rows.jsonl`. */
export interface MarkedRow {
  readonly kind: RowKind;
  readonly id: string;
  /** Its place in the order of recording, from 1; also its line in the file. */
  readonly serial: number;
  readonly public: RowFields;
  readonly privateHash?: string;
  /** The line, which is what was hashed. */
  readonly text: string;
}

/** The lines of `marked-rows.jsonl`, without what a broken write may have left half done after the last line end. */
export function linesOf(text: string): readonly string[] {
  return text.split('\n').slice(0, -1);
}

/** Reads a line; undefined when it is no row. That it is the line that was marked is what the hash tree says. */
export function parseMarkedRow(text: string): MarkedRow | undefined {
  try {
    const row = JSON.parse(text) as MarkedRow;
    const known = (rowKinds as readonly string[]).includes(row.kind);
    return known && typeof row.id === 'string' && typeof row.public === 'object'
      ? { ...row, text }
      : undefined;
  } catch {
    return undefined;
  }
}
