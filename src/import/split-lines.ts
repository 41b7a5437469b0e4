/** One line of a table: its bytes as they are, where it starts, and its cells or why it has none. */
export interface TableLine {
  /** Number of the line in the file, from 1. */
  readonly line: number;
  readonly bytes: Uint8Array;
  /** Cells as bytes, quotes taken off; undefined when the quotes are broken. */
  readonly cells: readonly Uint8Array[] | undefined;
  readonly broken?: string;
}

const QUOTE = 0x22;
const LF = 0x0a;
const CR = 0x0d;

/**
 * Cuts a table into lines without losing a byte: the bytes of all lines, one after the other, are the file again.
 * A line whose quotes are broken ends where its text line ends, so that one slip does not swallow the lines below.
 */
export function splitLines(bytes: Uint8Array, separator: number): TableLine[] {
  const lines: TableLine[] = [];
  let from = 0;
  let line = 1;
  while (from < bytes.length) {
    const read = readLine(bytes, from, separator);
    const whole = bytes.subarray(from, read.end);
    const { cells, broken } = read;
    lines.push({ line, bytes: whole, cells, ...(broken ? { broken } : {}) });
    for (const byte of whole) if (byte === LF) line++;
    from = read.end;
  }
  return lines;
}

interface ReadLine {
  readonly end: number;
  readonly cells: Uint8Array[] | undefined;
  readonly broken?: string;
}

function readLine(bytes: Uint8Array, from: number, separator: number): ReadLine {
  const cells: Uint8Array[] = [];
  const giveUp = (broken: string) => ({ end: afterLine(bytes, from), cells: undefined, broken });
  let at = from;
  for (;;) {
    if (bytes[at] === QUOTE) {
      const quoted = readQuoted(bytes, at);
      if (quoted === undefined) return giveUp('a quoted cell is never closed');
      cells.push(quoted.cell);
      at = quoted.end;
      if (at < bytes.length && bytes[at] !== separator && !endsLine(bytes, at))
        return giveUp('text stands after a closing quote');
    } else {
      const start = at;
      while (at < bytes.length && bytes[at] !== separator && !endsLine(bytes, at)) at++;
      cells.push(bytes.subarray(start, at));
    }
    if (at >= bytes.length || bytes[at] !== separator) return { end: afterLine(bytes, at), cells };
    at++;
  }
}

function readQuoted(
  bytes: Uint8Array,
  open: number,
): { cell: Uint8Array; end: number } | undefined {
  const kept: number[] = [];
  for (let at = open + 1; at < bytes.length; at++) {
    const byte = bytes[at] as number;
    if (byte === QUOTE && bytes[at + 1] !== QUOTE)
      return { cell: Uint8Array.from(kept), end: at + 1 };
    if (byte === QUOTE) at++;
    kept.push(byte);
  }
  return undefined;
}

function endsLine(bytes: Uint8Array, at: number): boolean {
  return bytes[at] === LF || (bytes[at] === CR && bytes[at + 1] === LF);
}

function afterLine(bytes: Uint8Array, from: number): number {
  const end = bytes.indexOf(LF, from);
  return end === -1 ? bytes.length : end + 1;
}
