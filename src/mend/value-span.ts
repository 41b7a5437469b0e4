import { isScalar, parseDocument, visit } from 'yaml';
import type { Problem } from '../read/problem.ts';

/** Where a piece of text stands: offsets of its first character and of the one after its last. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Where the text that a problem's mend replaces stands in its file; none where that is not certain. */
export function spansToMend(text: string, problem: Problem): readonly Span[] {
  const { mend, file } = problem;
  const at = offsetOf(text, problem);
  if (mend === undefined || at === undefined) return [];
  if (file.endsWith('.csv')) return itemsIn(text, csvCell(text, at), mend.from);
  const head = file.endsWith('.mdx') ? frontMatter(text) : { start: 0, end: text.length };
  if (head && at >= head.start && at < head.end)
    return itemsIn(text, yamlScalar(text, head, at), mend.from);
  return file.endsWith('.mdx') ? inMdx(text, at, problem.code, mend.from) : [];
}

function offsetOf(
  text: string,
  { line, column }: { readonly line: number; readonly column: number },
): number | undefined {
  let start = 0;
  for (let n = 1; n < line; n++) {
    const end = text.indexOf('\n', start);
    if (end === -1) return undefined;
    start = end + 1;
  }
  return start + column - 1;
}

function csvCell(text: string, start: number): Span {
  if (text[start] === '"') {
    const close = text.indexOf('"', start + 1);
    return { start: start + 1, end: close === -1 ? start + 1 : close };
  }
  const length = /^[^,;\r\n]*/.exec(text.slice(start))?.[0].length ?? 0;
  return { start, end: start + length };
}

function frontMatter(text: string): Span | undefined {
  const match = /^(---\r?\n)([\s\S]*?)\r?\n---[ \t]*(?:\r?\n|$)/.exec(text);
  const start = match?.[1]?.length ?? 0;
  return match ? { start, end: start + (match[2]?.length ?? 0) } : undefined;
}

/** The scalar that starts at an offset, without its quotes. */
function yamlScalar(text: string, within: Span, at: number): Span | undefined {
  let found: Span | undefined;
  const document = parseDocument(text.slice(within.start, within.end), { prettyErrors: false });
  visit(document, {
    Scalar(_, node) {
      const [start, end] = node.range ?? [0, 0];
      if (!isScalar(node) || start + within.start !== at) return undefined;
      const quote = node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE' ? 1 : 0;
      if (node.type?.startsWith('BLOCK')) return visit.BREAK;
      found = { start: at + quote, end: end + within.start - quote };
      return visit.BREAK;
    },
  });
  return found;
}

/** The whole value, or those items of a list in it that are the text: `floor:2` is a portion of `floor`. */
function itemsIn(text: string, span: Span | undefined, from: string): Span[] {
  if (span === undefined) return [];
  const value = text.slice(span.start, span.end);
  if (value.trim() === from) {
    const start = span.start + value.indexOf(from);
    return [{ start, end: start + from.length }];
  }
  return [...value.matchAll(/\S+/g)].flatMap(({ 0: item, index }) => {
    if (item.replace(/[:=][\s\S]*$/, '') !== from && item !== from) return [];
    const start = span.start + index;
    return [{ start, end: start + from.length }];
  });
}

/** A property of a component from its name on, or the address of a link from its text on. */
function inMdx(text: string, at: number, code: string, from: string): Span[] {
  const rest = text.slice(at);
  const property = /^[\w$:.-]+\s*=\s*("[^"]*"|'[^']*'|\{[^{}]*\})/.exec(rest);
  if (property?.[1]) {
    const start = at + property[0].length - property[1].length;
    const value = property[1];
    const places = [...value.matchAll(/[^"'[\]{},]+/g)].filter(({ 0: item }) => item === from);
    return places.map(({ index }) => ({ start: start + index, end: start + index + from.length }));
  }
  if (code !== 'id/unknown' || !rest.startsWith('[')) return [];
  const link = /^\[(?:[^\]\\]|\\.)*\](?:\(|:\s*)<?[a-z]+:/.exec(rest);
  const start = at + (link?.[0].length ?? 0);
  return link && text.startsWith(from, start) && !/^[\w-]/.test(text.slice(start + from.length))
    ? [{ start, end: start + from.length }]
    : [];
}
