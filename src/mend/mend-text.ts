import type { Mend, Problem } from '../read/problem.ts';
import { decodeText } from '../read/text.ts';
import { saysTheSameBut } from './same-but.ts';
import { type Span, spansToMend } from './value-span.ts';

/** A mend that was made, at its place. */
export interface Mended extends Mend {
  readonly file: string;
  readonly line: number;
  readonly column: number;
}

/** A file's bytes with the values of its problems mended, all other bytes as they were, and which mends were made. */
export function mendText(
  bytes: Uint8Array,
  problems: readonly Problem[],
): { readonly bytes: Uint8Array; readonly mended: readonly Mended[] } {
  let current = bytes;
  const mended: Mended[] = [];
  // One after the other, so that one that can't be made leaves the rest; none has a line end in it, but one moves the columns after it.
  for (const problem of [...problems].reverse()) {
    const next = mendOne(current, problem);
    if (next === undefined) continue;
    current = next.bytes;
    mended.unshift(next.mended);
  }
  return { bytes: current, mended };
}

function mendOne(bytes: Uint8Array, problem: Problem) {
  const { file, mend } = problem;
  const text = decodeText(bytes, file);
  if (mend === undefined || typeof text !== 'string' || !isPlain(mend.to)) return undefined;
  const spans = spansToMend(text, problem);
  const [first] = spans;
  if (first === undefined) return undefined;

  const after = replaceAt(text, spans, mend.to);
  if (!saysTheSameBut(text, after, { file, changed: spans.length })) return undefined;
  const above = text.slice(0, first.start).split('\n');
  const place = { file, line: above.length, column: (above.at(-1)?.length ?? 0) + 1 };
  const raw = intoBytes(bytes, text, spans, mend.to);
  return raw && { bytes: raw, mended: { ...place, from: mend.from, to: mend.to } };
}

/** A text that no kind of file has to quote. */
function isPlain(to: string): boolean {
  return /^[\p{L}\p{N}°µΩ/][^\r\n"',;:#{}[\]&*!|>]*$/u.test(to) && to.trim() === to;
}

function replaceAt(text: string, spans: readonly Span[], to: string): string {
  let out = '';
  let from = 0;
  for (const { start, end } of spans) {
    out += text.slice(from, start) + to;
    from = end;
  }
  return out + text.slice(from);
}

/** Places were counted in the text as decoded. Where the file writes its accents in another form, only lines without such can be mended. */
function intoBytes(
  bytes: Uint8Array,
  text: string,
  spans: readonly Span[],
  to: string,
): Uint8Array | undefined {
  const raw = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
  const bom = raw.startsWith('\ufeff') ? 1 : 0;
  const lines = raw.slice(bom).split('\n');
  const moved = spans.map(({ start, end }) => {
    const before = text.slice(0, start);
    const line = before.split('\n').length - 1;
    const column = start - (before.lastIndexOf('\n') + 1);
    const here = lines[line] ?? '';
    if (here.normalize('NFC') !== here) return undefined;
    const offset = bom + lines.slice(0, line).reduce((sum, one) => sum + one.length + 1, 0);
    return { start: offset + column, end: offset + column + end - start };
  });
  const known = moved.filter((span) => span !== undefined);
  if (known.length < moved.length) return undefined;
  return new TextEncoder().encode(replaceAt(raw, known, to));
}
