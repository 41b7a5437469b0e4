import { type RowKind, rowKinds } from '../model/kinds.ts';
import type { Lists } from '../read/lists.ts';
import type { Day } from '../time/day.ts';
import type { Standing } from './standing.ts';

/** An earlier row that no longer counts, what stands in its place, and why. */
export interface Correction {
  readonly kind: RowKind;
  /** Id of the row that no longer counts. */
  readonly old: string;
  /** Id of the row that counts in its place; undefined when it was withdrawn. */
  readonly by: string | undefined;
  /** Id of the row that says so: the correction or the withdrawal. */
  readonly said: string;
  /** Day it was said. */
  readonly on: Day;
  readonly because: string;
}

interface CorrectingRow {
  readonly id: string;
  readonly date?: Day;
  readonly recorded?: Day;
  readonly corrects?: string;
  readonly because?: string;
}

/** All corrections and withdrawals of a project, in order of the day they were said. */
export function correctionsOf(lists: Lists): readonly Correction[] {
  const kindOf = new Map<string, RowKind>();
  for (const kind of rowKinds) for (const { value } of lists[kind]) kindOf.set(value.id, kind);

  const corrections = rowKinds.flatMap((kind) =>
    lists[kind].flatMap(({ value }) => correctionIn(kind, value as CorrectingRow)),
  );
  const withdrawals = lists.withdrawals.flatMap(({ value }): Correction[] => {
    const kind = kindOf.get(value.row);
    if (kind === undefined) return [];
    return [
      {
        kind,
        old: value.row,
        by: undefined,
        said: value.id,
        on: value.date,
        because: value.because,
      },
    ];
  });
  return [...corrections, ...withdrawals].sort(
    (a, b) => compare(a.on, b.on) || compare(a.old, b.old),
  );
}

function correctionIn(kind: RowKind, row: CorrectingRow): Correction[] {
  const on = row.recorded ?? row.date;
  if (row.corrects === undefined || on === undefined) return [];
  return [{ kind, old: row.corrects, by: row.id, said: row.id, on, because: row.because ?? '' }];
}

function compare(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** From which day and until which day a row counts, by its id. */
export function standingsOf(corrections: readonly Correction[]): (id: string) => Standing {
  const since = new Map(corrections.flatMap(({ by, on }) => (by ? [[by, on] as const] : [])));
  const until = new Map(corrections.map(({ old, on }) => [old, on]));
  return (id) => ({ since: since.get(id), until: until.get(id) });
}

/**
 * The id of the first row in a chain of corrections. What other rows refer to, a part or an order, goes by it for ever, whichever
 * row says now what is known of it.
 */
export function firstIds(corrections: readonly Correction[]): (id: string) => string {
  const before = new Map(corrections.flatMap(({ by, old }) => (by ? [[by, old] as const] : [])));
  return (id) => {
    let first = id;
    // As many steps as there are corrections at the most, so that a loop (which the check refuses) ends too.
    for (let step = 0; step < before.size && before.has(first); step++)
      first = before.get(first) ?? first;
    return first;
  };
}
