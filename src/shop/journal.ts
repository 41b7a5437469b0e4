import { type FileHandle, mkdir, open, truncate } from 'node:fs/promises';
import { join } from 'node:path';
import { syncFolder } from '../write/swap-in.ts';
import type { PictureFile, RowOfItem } from './item.ts';
import { textOf } from './state-folder.ts';

/** Where a row stood when it was written. */
export interface Stands {
  readonly file: string;
  readonly line: number;
  readonly id: string;
}

/** Noted before a row is written: what will be, so that after a crash it is asked for again. */
export interface Taken {
  readonly step: 'taken';
  readonly item: string;
  readonly phone: string;
  readonly at: string;
  readonly digest: string;
  readonly project: string;
  readonly row: RowOfItem;
  /** The picture that the row names: it goes again when the row is refused. */
  readonly file?: PictureFile | undefined;
}

/** Noted once the row is in its file. */
export interface Written {
  readonly step: 'written';
  readonly item: string;
  readonly stands: readonly Stands[];
}

/** Noted when the row was refused after all: nothing of the item is in the files. */
export interface Dropped {
  readonly step: 'dropped';
  readonly item: string;
}

export type Note = Taken | Written | Dropped;

/** What the journal knows of an item that was not dropped. */
export interface Known {
  readonly taken: Taken;
  readonly stands?: readonly Stands[];
}

/** The durable list of what phones sent and what became of it; one line a step, on the disk before the next step is taken. */
export class Journal {
  readonly #file: FileHandle;
  readonly #known = new Map<string, Known>();

  private constructor(file: FileHandle) {
    this.#file = file;
  }

  /** Opens the journal of a state folder. A last line that was broken off in a crash is cut away: nothing was done on its word. */
  static async open(state: string): Promise<Journal> {
    await mkdir(state, { recursive: true, mode: 0o700 });
    const path = join(state, 'received.jsonl');
    const text = (await textOf(path)) ?? '';
    const whole = text.slice(0, text.lastIndexOf('\n') + 1);
    if (whole !== text) await truncate(path, Buffer.byteLength(whole));
    const journal = new Journal(await open(path, 'a', 0o600));
    await syncFolder(state);
    for (const line of whole.split('\n'))
      if (line !== '') journal.#remember(JSON.parse(line) as Note);
    return journal;
  }

  /** Adds a step; it is on the disk when this returns. */
  async note(note: Note): Promise<void> {
    await this.#file.appendFile(`${JSON.stringify(note)}\n`);
    await this.#file.datasync();
    this.#remember(note);
  }

  /** What is known of an item. */
  of(item: string): Known | undefined {
    return this.#known.get(item);
  }

  /** Items that were taken and of which nobody noted how it ended. */
  unfinished(): readonly Taken[] {
    return [...this.#known.values()].flatMap(({ taken, stands }) => (stands ? [] : [taken]));
  }

  close(): Promise<void> {
    return this.#file.close();
  }

  #remember(note: Note): void {
    const before = this.#known.get(note.item);
    if (note.step === 'taken') this.#known.set(note.item, { taken: note });
    else if (note.step === 'dropped') this.#known.delete(note.item);
    else if (before) this.#known.set(note.item, { ...before, stands: note.stands });
  }
}
