import type { ListKind } from '../model/kinds.ts';

/** A row as it would be added: its fields as text. */
export interface DraftRow {
  readonly kind: ListKind;
  readonly fields: Readonly<Record<string, string>>;
}

/** What becomes of one line that was read. Each line has exactly one. */
export type Outcome = { readonly line: number; readonly text: string } & (
  | { readonly is: 'added'; readonly row: DraftRow; readonly key: string; readonly note?: string }
  | { readonly is: 'known'; readonly id: string; readonly gone: boolean }
  | { readonly is: 'skipped'; readonly why: string }
  | { readonly is: 'refused'; readonly why: string }
);

export type Counts = Readonly<Record<Outcome['is'] | 'read', number>>;

/** How many lines were read, and what became of them. @throws when one was lost, which is a mistake of this program. */
export function countOutcomes(outcomes: readonly Outcome[], read: number): Counts {
  const counts = { added: 0, known: 0, skipped: 0, refused: 0 };
  for (const { is } of outcomes) counts[is]++;
  if (outcomes.length !== read || new Set(outcomes.map(({ line }) => line)).size !== read)
    throw new Error(`${read} lines were read and ${outcomes.length} told of: this is our bug`);
  return { ...counts, read };
}
