import type { Project } from '../book/types.ts';
import { publicFields } from '../mark/marked-rows.ts';
import type { Day } from '../time/day.ts';

/** A row whose marked text holds the hash of a photo, and the first mark over it. */
export interface BoundRow {
  readonly id: string;
  readonly marked: Day;
}

/** Rows that were marked with the hash of a photo in them: each binds the claim to that very file. */
export function rowsBoundTo({ marks }: Project, sha256: string): BoundRow[] {
  if (marks === undefined) return [];
  return marks.rows
    .filter((row) => row.text.includes(sha256) && publicFields(row)['photo-sha256'] === sha256)
    .flatMap(({ id, serial }) => {
      const mark = marks.marks.find(({ size }) => size >= serial);
      return mark ? [{ id, marked: mark.date as Day }] : [];
    });
}
