import { charsetRefusal } from './charset.ts';

/** A content line of a calendar: `NAME;PARAMETER=VALUE:VALUE` (RFC 5545, 3.1). */
export interface ContentLine {
  /** Number of its first line in the file, from 1. */
  readonly line: number;
  /** Its bytes as they are, folded. */
  readonly bytes: Uint8Array;
  /** In capitals; empty for a line that is none. */
  readonly name: string;
  readonly params: ReadonlyMap<string, string>;
  readonly value: string;
  readonly text: string;
}

const PARAMETER = /;([A-Za-z0-9-]+)=((?:"[^"]*"|[^";:,]*)(?:,(?:"[^"]*"|[^";:,]*))*)/y;

/** Cuts a calendar into content lines. They are unfolded as bytes, since a fold may stand inside a character. */
export function contentLines(bytes: Uint8Array): ContentLine[] {
  const latin = Buffer.from(bytes).toString('latin1');
  const lines: ContentLine[] = [];
  let line = 1;
  for (const [folded] of latin.matchAll(/[^\n]*(?:\n[ \t][^\n]*)*(?:\n|$)/g)) {
    if (folded === '') continue;
    const whole = unfolded(folded).replace(/\r?\n$|\r$/, '');
    const text = Buffer.from(whole, 'latin1')
      .toString('utf8')
      .replace(/^\ufeff/, '')
      .normalize('NFC');
    if (text.trim() !== '')
      lines.push({ line, bytes: Buffer.from(folded, 'latin1'), text, ...parts(text) });
    line += folded.split('\n').length - 1;
  }
  return lines;
}

function unfolded(latin: string): string {
  return latin.replace(/\r?\n[ \t]/g, '');
}

/** Why a calendar can't be read as UTF-8, which it must be in (3.1.4); a character that a fold has cut in two is whole without it. */
export function calendarRefusal(bytes: Uint8Array, file: string): string | undefined {
  const whole = Buffer.from(unfolded(Buffer.from(bytes).toString('latin1')), 'latin1');
  return charsetRefusal(whole, 'utf-8', file) && charsetRefusal(bytes, 'utf-8', file, false);
}

function parts(text: string): Pick<ContentLine, 'name' | 'params' | 'value'> {
  const params = new Map<string, string>();
  const name = /^[A-Za-z0-9-]+/.exec(text)?.[0] ?? '';
  let at = name.length;
  PARAMETER.lastIndex = at;
  for (let found = PARAMETER.exec(text); found; found = PARAMETER.exec(text)) {
    params.set((found[1] ?? '').toUpperCase(), (found[2] ?? '').replaceAll('"', ''));
    at = PARAMETER.lastIndex;
  }
  if (name === '' || text[at] !== ':') return { name: '', params: new Map(), value: '' };
  return { name: name.toUpperCase(), params, value: text.slice(at + 1) };
}

/** The texts of a value (RFC 5545, 3.3.11): commas part them, and a backslash takes the meaning from a sign. */
export function textsOf(value: string): string[] {
  const texts = [''];
  for (const [sign] of value.matchAll(/\\.|[^\\]|\\$/gsu)) {
    if (sign === ',') texts.push('');
    else texts[texts.length - 1] += sign.length > 1 && sign[0] === '\\' ? plain(sign[1]) : sign;
  }
  return texts;
}

function plain(sign = ''): string {
  return sign === 'n' || sign === 'N' ? '\n' : sign;
}

/** A line of a calendar, folded so that no line has more than 75 octets (RFC 5545, 3.1). */
export function foldedLine(text: string): string {
  let length = 0;
  const pieces = [...text].map((sign) => {
    const size = Buffer.byteLength(sign);
    const fits = length + size <= 75;
    length = fits ? length + size : size + 1;
    return fits ? sign : `\r\n ${sign}`;
  });
  return `${pieces.join('')}\r\n`;
}
