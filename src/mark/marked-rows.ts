import { type RowKind, rowKinds } from '../model/kinds.ts';
import type { RowFields } from '../trust/row-hash.ts';

/** A row as it was published under a mark: one line of `marked-rows.jsonl`. */
export interface MarkedRow {
  readonly kind: RowKind;
  readonly id: string;
  /** Its place in the order of recording, from 1; also its line in the file. */
  readonly serial: number;
  readonly privateHash: string | undefined;
  /** The line, which is what was hashed. */
  readonly text: string;
}

/** The lines of `marked-rows.jsonl`, without what a broken write may have left half done after the last line end. */
export function linesOf(text: string): readonly string[] {
  return text.split('\n').slice(0, -1);
}

/** The start of a line: canonical JSON has the members in this order, and ids and kinds need no escapes. */
const START =
  /^\{"id":"([a-z0-9-]+)","kind":"([a-z]+)",(?:"privateHash":"([0-9a-f]{64})",)?"public":\{/;

/**
 * Reads a line; undefined when it is no row. That it is the line that was marked is what the hash tree says.
 * Its fields are read when they are asked for: of many rows few have changed.
 */
export function parseMarkedRow(text: string, index: number): MarkedRow | undefined {
  const [, id, kind, privateHash] = START.exec(text) ?? [];
  if (id === undefined || !isRowKind(kind)) return undefined;
  return { kind, id, serial: index + 1, privateHash, text };
}

/** The published fields of a marked row. */
export function publicFields({ text }: MarkedRow): RowFields {
  return (JSON.parse(text) as { readonly public: RowFields }).public;
}

function isRowKind(kind: string | undefined): kind is RowKind {
  return (rowKinds as readonly string[]).includes(kind ?? '');
}
