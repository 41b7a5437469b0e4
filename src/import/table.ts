import type { ImportMapping } from '../model/kinds.ts';
import { type Encoding, textReader } from './charset.ts';
import { splitLines, type TableLine } from './split-lines.ts';

/** A line below the header: what is in its cells by their headers, or why that can't be said. */
export interface DataLine {
  readonly line: number;
  readonly bytes: Uint8Array;
  readonly text: string;
  readonly cells: Readonly<Record<string, string>> | undefined;
  readonly broken?: string;
  /** Cells that no rule looks at, since nobody wrote words there. */
  readonly unread?: readonly string[];
}

/** A table cut into what stands above its header, the header and the lines below. */
export interface Table {
  readonly above: readonly TableLine[];
  readonly header: TableLine;
  readonly names: readonly string[];
  readonly separator: number;
  readonly data: readonly DataLine[];
  /** Lines without any cell filled; they are counted and passed over. */
  readonly blank: number;
}

const BOM = [0xef, 0xbb, 0xbf];

/** Cuts a table; a text where its header can't be found. */
export function readTable(bytes: Uint8Array, mapping: ImportMapping): Table | { missing: string } {
  const decode = textReader(mapping.encoding as Encoding);
  const start = BOM.every((byte, index) => bytes[index] === byte) ? BOM.length : 0;
  const body = bytes.subarray(start);
  const wanted = [...new Set(Object.values(mapping.columns).flat())];
  const separator = separatorOf(mapping.separator) ?? guessSeparator(body);
  const lines = splitLines(body, separator);
  const namesOf = (line: TableLine | undefined) =>
    (line?.cells ?? []).map((cell) => decode(cell).trim());
  const isHeader = (line: TableLine) => {
    const names = namesOf(line);
    return wanted.every((name) => names.includes(name));
  };
  const given = mapping.skipLines;
  const index =
    given === undefined
      ? lines.findIndex(isHeader)
      : lines.findIndex(({ line }) => line === given + 1);
  const header = lines[index];
  if (header === undefined || !isHeader(header))
    return { missing: whyMissing(header, wanted, namesOf) };

  const names = namesOf(header);
  const data = lines.slice(index + 1).map((line) => dataLine(line, names, decode));
  const filled = data.filter(({ text }) => text !== '');
  const blank = data.length - filled.length;
  return { above: lines.slice(0, index), header, names, separator, data: filled, blank };
}

function dataLine(
  { line, bytes, cells, broken }: TableLine,
  names: readonly string[],
  decode: (bytes: Uint8Array) => string,
): DataLine {
  const texts = cells?.map((cell) => decode(cell).trim());
  const text = texts ? texts.filter((cell) => cell !== '').join(' · ') : decode(bytes).trim();
  const same = { line, bytes, text };
  if (texts === undefined) return { ...same, cells: undefined, ...(broken ? { broken } : {}) };
  // Some programs end each line with one more separator than the header has.
  const surplus = texts.slice(names.length).some((cell) => cell !== '');
  const named = Object.fromEntries(names.map((name, index) => [name, texts[index] ?? '']));
  if (texts.length >= names.length && !surplus) return { ...same, cells: named };
  const why = `${texts.length} cells where the header has ${names.length}`;
  return { ...same, cells: named, broken: why };
}

function whyMissing(
  header: TableLine | undefined,
  wanted: readonly string[],
  namesOf: (line: TableLine | undefined) => string[],
): string {
  if (header === undefined)
    return `no line has all the columns of the mapping: ${wanted.join(', ')}`;
  const names = namesOf(header);
  const lacking = wanted.filter((name) => !names.includes(name));
  return `line ${header.line} lacks the columns ${lacking.join(', ')}; it has: ${names.join(', ')}`;
}

/** The byte that a mapping's separator stands for. */
export function separatorOf(name: string | undefined): number | undefined {
  return name === undefined ? undefined : (name === 'tab' ? '\t' : name).charCodeAt(0);
}

/** Of `;`, tab, `|` and `,` the one that most lines have; half the world's decimals have commas. */
export function guessSeparator(bytes: Uint8Array): number {
  const lines = new TextDecoder('latin1').decode(bytes.subarray(0, 20_000)).split(/\r?\n/);
  const shares = [';', '\t', '|', ','].map((mark) => ({
    mark,
    lines: lines.filter((line) => line.split(mark).length > 2).length,
  }));
  const best = shares.reduce((a, b) => (b.lines > a.lines ? b : a));
  return best.mark.charCodeAt(0);
}
