import type { Day } from '../time/day.ts';
import { type Hash, toBase64 } from './hash.ts';
import { type NoteSignature, printSignature } from './note.ts';

/**
 * A publication checkpoint of the ledger: how many rows there were on a day, and the root of the hash tree over them.
 * Whoever keeps one can tell later whether any of these rows changed, moved or vanished: it makes the ledger tamper-evident.
 * The date is the builder's own word: it is no part of the tree, so only a signature or a kept copy shows that it changed.
 */
export interface Mark {
  /** Names the ledger: the site's address and the project, without scheme, such as `example.org/lapwing`. */
  readonly origin: string;
  readonly size: number;
  readonly root: Hash;
  readonly date: Day;
  readonly signatures: readonly NoteSignature[];
}

/**
 * The lines of a mark that are signed, each ended by a line feed: the note text of a C2SP tlog-checkpoint. The date is the one
 * extension line.
 *
 * ```
 * example.org/lapwing
 * 180
 * CsUYapGGPo4dkMgIAUqom/Xajj7h2fB2MPA3j2jxq2I=
 * date 2025-03-08
 * ```
 */
export function markText({ origin, size, root, date }: Mark): string {
  return `${origin}\n${size}\n${toBase64(root)}\ndate ${date}\n`;
}

/** A mark as it stands in `marks.txt`: its text and, after a blank line, its signature lines. A signed one is a C2SP signed note. */
export function printMark(mark: Mark): string {
  const signatures = mark.signatures.map(printSignature).join('');
  return markText(mark) + (signatures && `\n${signatures}`);
}

/**
 * The contents of `marks.txt`. Paragraphs stand one blank line apart; a paragraph is either the text of a mark or the signatures of
 * the mark before it. So a mark or a signature is added at the end, and nothing above is touched.
 */
export function printMarks(marks: readonly Mark[]): string {
  return marks.map(printMark).join('\n');
}

/** What to add to the end of a `marks.txt` that holds a mark already, or to an empty one, for one more mark. */
export function appendedMark(mark: Mark, earlier: readonly Mark[]): string {
  return (earlier.length > 0 ? '\n' : '') + printMark(mark);
}
