/** A place in a file of the content folder; line and column count from 1. */
export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** Something in the content that is wrong, with what to do about it. Only an error stops a build. */
export interface Problem extends Place {
  readonly level: 'error' | 'warning';
  /** Stable name of the rule, `area/what`. */
  readonly code: string;
  /** The thing, what is wrong with it, and the value found. */
  readonly message: string;
  /** The text to type instead, as an instruction. */
  readonly fix?: string | undefined;
  /** The replacement, where there is only one that can be meant; `check --fix` makes it. */
  readonly mend?: Mend | undefined;
}

/** A text as it stands at a problem's place, and the one text that is meant by it. */
export interface Mend {
  readonly from: string;
  readonly to: string;
}

/** Makes an error at a place. */
export function problemAt(place: Place, code: string, message: string, fix?: string): Problem {
  const { file, line, column } = place;
  const said = { message: visible(message), ...(fix ? { fix: visible(fix) } : {}) };
  return { level: 'error', code, file, line, column, ...said };
}

/** What a terminal would obey, or nobody would see. */
const UNSEEN = /(?![\t\n])[\p{Cc}\p{Cf}\u2028\u2029]/gu;

/** A text in which every such character is written out, as `\u001b`. */
export function visible(text: string): string {
  return text.replace(
    UNSEEN,
    (sign) => `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`,
  );
}

/** The same problem, with its sole mend where there is one. */
export function withMend(problem: Problem, from: string, to: string | undefined): Problem {
  return to === undefined || to === from ? problem : { ...problem, mend: { from, to } };
}

/** By file, then line, then column, then code: the order a builder works through them. What every row of a table says of its header is said once. */
export function sortProblems(problems: Iterable<Problem>): Problem[] {
  const once = new Map([...problems].map((problem) => [JSON.stringify(problem), problem]));
  return [...once.values()].sort(
    (a, b) =>
      compareText(a.file, b.file) ||
      a.line - b.line ||
      a.column - b.column ||
      compareText(a.code, b.code),
  );
}

function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
