import type { Problem } from '../read/problem.ts';
import { digestOf, fileOf, type Item, rowOf } from './item.ts';
import type { Journal, Stands, Taken } from './journal.ts';
import type { Ledger } from './ledger.ts';
import { staged, unstage } from './staged.ts';

/** What became of an item. Only `written` lets a phone forget it. */
export type Received =
  | { readonly written: readonly Stands[] }
  | { readonly refused: readonly Pick<Problem, 'message' | 'fix'>[] }
  | { readonly again: 'busy' | 'picture' }
  | { readonly other: true };

/**
 * Takes items one at a time, in the order they come. What will be written is noted in the journal first, then written, then noted as done:
 * whenever the machine stops, the next start ends what was begun, and a phone that asks again is told what became of it.
 */
export class Receiver {
  readonly #state: string;
  readonly #journal: Journal;
  readonly #ledger: Ledger;
  #last: Promise<unknown> = Promise.resolve();

  constructor(state: string, journal: Journal, ledger: Ledger) {
    this.#state = state;
    this.#journal = journal;
    this.#ledger = ledger;
  }

  /** Takes an item, after those that came before it. */
  receive(phone: string, item: Item, now: Date): Promise<Received> {
    const mine = this.#last.then(() => this.#take(phone, item, now));
    this.#last = mine.catch(() => {});
    return mine;
  }

  /** Ends what a crash broke off: what was noted as taken is asked for again under its own key, which writes it or finds it written. */
  async recover(): Promise<number> {
    const unfinished = this.#journal.unfinished();
    for (const taken of unfinished) await this.#write(taken);
    return unfinished.length;
  }

  /** Waits for what is being written. */
  async settle(): Promise<void> {
    await this.#last;
  }

  async #take(phone: string, item: Item, now: Date): Promise<Received> {
    const digest = digestOf(item);
    const known = this.#journal.of(item.id);
    if (known && known.taken.digest !== digest) return { other: true };
    if (known?.stands) return { written: known.stands };
    if (!known && !(await this.#keepPicture(item))) return { again: 'picture' };
    const taken: Taken = known?.taken ?? {
      step: 'taken',
      item: item.id,
      phone,
      at: now.toISOString(),
      digest,
      project: item.project,
      row: rowOf(item),
      file: fileOf(item),
    };
    if (!known) await this.#journal.note(taken);
    const received = await this.#write(taken);
    if ('written' in received && item.picture) await unstage(this.#state, item.picture);
    return received;
  }

  async #write(taken: Taken): Promise<Received> {
    const { item: key, project, row, phone, file } = taken;
    const wrote = await this.#ledger.write({ key, project, row, phone });
    if ('busy' in wrote) return { again: 'busy' };
    if ('problems' in wrote) {
      if (file) await this.#ledger.drop({ project, ...file });
      await this.#journal.note({ step: 'dropped', item: taken.item });
      return { refused: wrote.problems.map(({ message, fix }) => ({ message, fix })) };
    }
    await this.#journal.note({ step: 'written', item: taken.item, stands: wrote.stands });
    return { written: wrote.stands };
  }

  async #keepPicture(item: Item): Promise<boolean> {
    const file = fileOf(item);
    if (file === undefined || item.picture === undefined) return true;
    const bytes = await staged(this.#state, item.picture);
    if (bytes === undefined) return false;
    await this.#ledger.keep({ project: item.project, ...file }, bytes);
    return true;
  }
}
