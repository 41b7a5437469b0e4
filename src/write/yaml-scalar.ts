import { isMap, isScalar, isSeq, parseDocument } from 'yaml';

/** How a list writes a text: plain where that can be, or in quotes. */
export type ScalarStyle = 'plain' | 'double' | 'single';

/** Where a text stands: commas and brackets end it in a flow collection only. */
export type Setting = 'block' | 'flow';

/** A text as one line of YAML that reads back as that text. */
export function writeScalar(text: string, style: ScalarStyle, setting: Setting): string {
  if (style === 'plain' && isPlain(text, setting)) return text;
  if (style === 'single' && !/[\p{Cc}\u2028\u2029]/u.test(text))
    return `'${text.replaceAll("'", "''")}'`;
  return inDoubleQuotes(text);
}

/** Whether a text can stand without quotes. */
export function isPlain(text: string, setting: Setting): boolean {
  if (/^\s|\s$|[\p{Cc}\u2028\u2029]/u.test(text) || text === '') return false;
  const flow = setting === 'flow';
  const source = flow ? `[{k: ${text}, l: [${text}]}]` : `- k: ${text}\n  l:\n    - ${text}\n`;
  const document = parseDocument(source, { prettyErrors: false });
  if (document.errors.length > 0 || document.warnings.length > 0) return false;
  const row = isSeq(document.contents) ? document.contents.items[0] : undefined;
  if (!isMap(row) || row.items.length !== 2) return false;
  const list = row.get('l', true);
  const inList = isSeq(list) && list.items.length === 1 ? list.items[0] : undefined;
  return [row.get('k', true), inList].every(
    (node) =>
      isScalar(node) && node.type === 'PLAIN' && node.value !== null && node.source === text,
  );
}

/** Whether a text would be a number elsewhere, as amounts and lengths of work are; those are put in quotes. */
export function looksLikeNumber(text: string): boolean {
  return /^[+-]?[\d.](?=\d*[.:])[\d.:]*$/.test(text);
}

function inDoubleQuotes(text: string): string {
  return JSON.stringify(text).replace(
    /[\u007f-\u009f\u2028\u2029\ufeff]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
