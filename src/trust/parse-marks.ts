import { type Day, parseDay } from '../time/day.ts';
import { fromBase64, HASH_BYTES } from './hash.ts';
import type { Mark } from './mark.ts';
import { type NoteSignature, parseSignature, SIGNATURE_START } from './note.ts';

/** Something in `marks.txt` that is wrong, with the line it is on, counted from 1. */
export interface MarkProblem {
  readonly line: number;
  readonly code: string;
  readonly message: string;
  readonly fix: string;
}

/** What `marks.txt` holds. The marks are all of them only when there are no problems. */
export interface ParsedMarks {
  readonly marks: readonly Mark[];
  readonly problems: readonly MarkProblem[];
}

const RESTORE =
  'restore marks.txt as it was published; only the mark command adds to it, at its end';

/** Origin, size, root and date. */
const MARK_LINES = 4;

/** Lines that follow one another, with the number of the first. */
interface Paragraph {
  readonly line: number;
  readonly lines: readonly string[];
}

type Report = (line: number, code: string, message: string, fix?: string) => undefined;

/**
 * Reads `marks.txt`. A text without problems is exactly what `printMarks` prints for its marks: there is one way to write a mark.
 * Marks must have one origin, more rows each time, and dates that don't go back.
 */
export function parseMarks(text: string): ParsedMarks {
  const problems: MarkProblem[] = [];
  const report: Report = (line, code, message, fix = RESTORE) => {
    problems.push({ line, code, message, fix });
  };
  const marks: Mark[] = [];

  for (const paragraph of paragraphsOf(text, report)) {
    const before = marks.at(-1);
    if (paragraph.lines[0]?.startsWith(SIGNATURE_START)) {
      const signed = withSignatures(before, paragraph, report);
      if (signed) marks.splice(-1, 1, signed);
    } else {
      const mark = parseMark(paragraph, report);
      if (mark && before) checkOrder(mark, before, paragraph.line, report);
      if (mark) marks.push(mark);
    }
  }
  return { marks, problems };
}

/** The paragraphs of the file, one blank line apart. */
function paragraphsOf(text: string, report: Report): readonly Paragraph[] {
  if (text === '') return [];
  const carriageReturn = text.split('\n').findIndex((line) => line.includes('\r'));
  if (carriageReturn >= 0) {
    const fix = 'save marks.txt with LF line ends';
    report(carriageReturn + 1, 'marks/line-end', 'the line ends in CR LF', fix);
    return [];
  }
  if (!text.endsWith('\n'))
    report(text.split('\n').length, 'marks/cut', 'the last line has no end, so it may be cut off');
  return splitAtBlankLines(text.replace(/\n$/, ''), report);
}

function splitAtBlankLines(text: string, report: Report): readonly Paragraph[] {
  const paragraphs: Paragraph[] = [];
  let line = 1;
  for (const chunk of text.split('\n\n')) {
    const lines = chunk.split('\n');
    const filled = lines.filter((item) => item !== '');
    const blank = lines.indexOf('');
    if (blank >= 0)
      report(line + blank, 'marks/blank', 'the blank line separates nothing', 'delete the line');
    if (filled.length > 0) paragraphs.push({ line: line + (blank === 0 ? 1 : 0), lines: filled });
    line += lines.length + 1;
  }
  return paragraphs;
}

/** C2SP tlog-checkpoint: origin, size, root; then the one extension line that a mark has. */
function parseMark({ line, lines }: Paragraph, report: Report): Mark | undefined {
  const [origin = '', size = '', root = '', date = '', ...more] = lines;
  if (lines.length < MARK_LINES) {
    const wrong = `the mark has ${lines.length} of its ${MARK_LINES} lines`;
    return report(line + lines.length - 1, 'marks/cut', wrong);
  }
  if (more.length > 0) report(line + MARK_LINES, 'marks/line', `"${more[0]}" is no line of a mark`);

  const name = parseOrigin(origin) ?? report(line, 'marks/origin', `"${origin}" is no origin`);
  const rows = parseSize(size) ?? report(line + 1, 'marks/size', `"${size}" is no number of rows`);
  const hash = parseRoot(root) ?? report(line + 2, 'marks/root', `"${root}" is no root`);
  const day = parseDate(date) ?? report(line + 3, 'marks/date', `"${date}" is no date of a mark`);
  if (name === undefined || rows === undefined || hash === undefined || day === undefined)
    return undefined;
  return { origin: name, size: rows, root: hash, date: day, signatures: [] };
}

/** Printable ASCII without spaces and plus signs, so that it can name a key too. */
function parseOrigin(line: string): string | undefined {
  return /^[!-*,-~]+$/.test(line) ? line : undefined;
}

/** Decimal, no leading zeros; a mark of no rows would mark nothing. */
function parseSize(line: string): number | undefined {
  const size = /^[1-9]\d{0,15}$/.test(line) ? Number(line) : Number.NaN;
  return Number.isSafeInteger(size) ? size : undefined;
}

function parseRoot(line: string): Uint8Array | undefined {
  const bytes = fromBase64(line);
  return bytes?.length === HASH_BYTES ? bytes : undefined;
}

function parseDate(line: string): Day | undefined {
  return line.startsWith('date ') ? parseDay(line.slice('date '.length)) : undefined;
}

function withSignatures(
  mark: Mark | undefined,
  { line, lines }: Paragraph,
  report: Report,
): Mark | undefined {
  if (mark === undefined) return report(line, 'marks/signature', 'no mark is before the signature');
  if (mark.signatures.length > 0)
    return report(line - 1, 'marks/blank', 'a blank line parts the signatures', 'delete the line');

  const signatures: NoteSignature[] = [];
  for (const [index, text] of lines.entries()) {
    const signature = parseSignature(text);
    if (signature) signatures.push(signature);
    else report(line + index, 'marks/signature', `"${text}" is no signature line`);
  }
  return { ...mark, signatures };
}

function checkOrder(mark: Mark, before: Mark, line: number, report: Report): void {
  if (mark.origin !== before.origin)
    report(line, 'marks/origin', `the origin was "${before.origin}" and is now "${mark.origin}"`);
  if (mark.size <= before.size)
    report(line + 1, 'marks/size', `${mark.size} rows is not more than ${before.size} before`);
  if (mark.date < before.date)
    report(line + 3, 'marks/date', `${mark.date} is before ${before.date}, the mark above`);
}
