import { isScalar, parseDocument, visit } from 'yaml';
import { splitCsv } from '../read/csv.ts';
import { readMdx } from '../read/mdx.ts';

/** Whether a changed file says the same as before but for so many values: what an edit did is read again, not believed. */
export function saysTheSameBut(
  before: string,
  after: string,
  { file, changed }: { readonly file: string; readonly changed: number },
): boolean {
  const [old, fresh] = [valuesOf(before, file), valuesOf(after, file)];
  if (old.length !== fresh.length) return false;
  const different = old.filter((value, index) => value !== fresh[index]).length;
  return different > 0 && different <= changed;
}

/** Every value of a file in its order. */
function valuesOf(text: string, file: string): readonly string[] {
  if (file.endsWith('.csv'))
    return splitCsv(text, file).rows.flatMap((row) => [...row.map((cell) => cell.text), '\n']);
  if (!file.endsWith('.mdx')) return yamlValues(text);
  const [, head = ''] = /^---\r?\n([\s\S]*?)\r?\n---/.exec(text) ?? [];
  const { components, links, words } = readMdx(text, file).body;
  return [
    ...yamlValues(head),
    ...components.flatMap(({ name, props }) => [name, ...props.map(({ source }) => source)]),
    ...links.map(({ url }) => url),
    String(words),
  ];
}

function yamlValues(text: string): string[] {
  const values: string[] = [];
  const document = parseDocument(text, { prettyErrors: false });
  visit(document, {
    Node(_, node) {
      values.push(isScalar(node) ? String(node.source ?? node.value) : '');
    },
  });
  return [...values, String(document.errors.length)];
}
