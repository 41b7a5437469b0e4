import type { Problem } from '../read/problem.ts';
import type { RowOfItem } from './item.ts';
import type { Stands } from './journal.ts';

/** How a try to write ended; `busy` when somebody else has been writing for long and it should be tried again. */
export type Wrote =
  | { readonly stands: readonly Stands[] }
  | { readonly problems: readonly Problem[] }
  | { readonly busy: true };

/** A row that a phone entered, under the item's own id: asked for twice under one, it is written once. */
export interface Asked {
  readonly project: string;
  readonly row: RowOfItem;
  readonly key: string;
  readonly phone: string;
}

/** What the bench page needs of a ledger: to write a row once, to keep and drop a file. */
export interface Ledger {
  write(asked: Asked): Promise<Wrote>;
  keep(file: FileToKeep, bytes: Uint8Array): Promise<void>;
  drop(file: FileToKeep): Promise<void>;
}

/** A file that a row names. */
export interface FileToKeep {
  readonly project: string;
  readonly folder: 'photos' | 'receipts';
  readonly name: string;
}
