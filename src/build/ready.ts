import type { Book } from '../book/types.ts';
import type { ReadContent } from '../read/content.ts';
import type { Problem } from '../read/problem.ts';
import type { State } from './part-key.ts';

/** Content that pages can be made of: it was checked, and what takes long to make is there. */
export interface ReadyContent {
  /** What the folder was just before it was read. */
  readonly state: State;
  readonly content: ReadContent;
  readonly book: Book;
  readonly problems: readonly Problem[];
  /** Throws where a file is not as it was when it was read. */
  stillSame(): Promise<void>;
}
