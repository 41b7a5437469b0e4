import type { Project } from '../book/types.ts';
import { type Day, showShortDay } from '../time/day.ts';
import { toBase64 } from '../trust/hash.ts';
import type { Mark } from '../trust/mark.ts';
import { type PublishedLedger, publishLedger } from '../trust/publish.ts';
import { verifyMark } from '../trust/sign-mark.ts';
import { type Words, wordsOf } from '../words/words.ts';

/** The newest mark of a project, if it has any. */
export function newestMark({ marks }: Project): Mark | undefined {
  return marks?.marks.at(-1);
}

/** The first mark on or after a day: the one that closed over the rows of that day. It stays the same once it is there. */
export function markOver({ marks }: Project, day: Day): Mark | undefined {
  return marks?.marks.find(({ date }) => date >= day);
}

/** A mark in words for a page, a feed or a printed record. */
export interface ShownMark {
  /** `1,108 rows`. */
  readonly rows: string;
  readonly date: string;
  /** The whole root, in base64. */
  readonly root: string;
  /** Its first 72 bits: enough to tell by eye that two are the same, too short to prove it. */
  readonly shortRoot: string;
}

/** A mark as readers see it. */
export function showMark({ size, root, date }: Mark, language: string): ShownMark {
  const whole = toBase64(root);
  return {
    rows: wordsOf(language).marks.rows(new Intl.NumberFormat(language).format(size), size),
    date: showShortDay(date, language),
    root: whole,
    shortRoot: `${whole.slice(0, 12)}…`,
  };
}

/** Who signed a mark, in words; only what the project's own key verifies is called signed by it. */
export function signedBy(mark: Mark, { marks }: Project, { marks: said }: Words): string {
  const own = marks?.key && verifyMark(mark, marks.key).holds ? said.ownKey : undefined;
  const others = mark.signatures
    .map(({ name }) => name)
    .filter((name) => own === undefined || name !== marks?.key?.name);
  return [own, ...others].filter((name) => name !== undefined).join(', ') || said.nobody;
}

const kept = new WeakMap<Project, PublishedLedger>();

/** The files that a reader checks the ledger with; worked out once for all of their pages. */
export function ledgerFiles(project: Project): PublishedLedger {
  const { marks = [], rows = [] } = project.marks ?? {};
  const files =
    kept.get(project) ??
    publishLedger(
      rows.map(({ text }) => text),
      marks,
    );
  kept.set(project, files);
  return files;
}

/** The public key in PEM, as openssl reads it. */
export function publicKeyPem({ marks }: Project): string | undefined {
  return marks?.key?.publicKey.export({ type: 'spki', format: 'pem' }).toString();
}

/** Commands that verify the newest signature of the project's key with openssl; undefined while nothing is signed. */
export function signatureCommands({ marks }: Project): string | undefined {
  const key = marks?.key;
  const mark = key && marks.marks.findLast((item) => verifyMark(item, key).holds);
  const line = mark?.signatures.find(({ name }) => name === key?.name);
  if (mark === undefined || line === undefined) return undefined;
  const { origin, size, root, date } = mark;
  return [
    `printf '%s\\n' '${origin}' '${size}' '${toBase64(root)}' 'date ${date}' > mark.txt`,
    `printf '%s' '${toBase64(line.signature)}' | base64 -d > mark.sig`,
    'openssl pkeyutl -verify -pubin -inkey key.pem -rawin -in mark.txt -sigfile mark.sig',
  ].join('\n');
}
