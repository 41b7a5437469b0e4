import { type Problem, problemAt } from './problem.ts';

const BOM = 0xfeff;

/**
 * Decodes a file as UTF-8 in Unicode normal form C, without a byte order mark.
 * Bytes that are not UTF-8 give a problem at their line and column, since guessing an encoding would change names and prices quietly.
 */
export function decodeText(bytes: Uint8Array, file: string): string | Problem {
  const text = decodeTyped(bytes, file);
  return typeof text === 'string' ? text.normalize('NFC') : text;
}

/**
 * Decodes a file as UTF-8 and leaves it as it was typed. An entry is checked in this form, since it is rendered in it: normal form C
 * turns some characters of other scripts into signs that mean something in MDX.
 */
export function decodeTyped(bytes: Uint8Array, file: string): string | Problem {
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    if (text.includes('\0')) return zeroByte(bytes, file);
    return text.charCodeAt(0) === BOM ? text.slice(1) : text;
  } catch {
    const { line, column, byte } = firstBadByte(bytes);
    const shown = `0x${byte.toString(16).toUpperCase().padStart(2, '0')}`;
    const place = { file, line, column };
    return problemAt(
      place,
      'file/not-utf8',
      `the file is not UTF-8: byte ${shown} fits no character`,
      'save the file as "UTF-8" (in a spreadsheet: "CSV UTF-8")',
    );
  }
}

/** UTF-16 without a mark at its start is UTF-8 with every other byte zero. */
function zeroByte(bytes: Uint8Array, file: string): Problem {
  const before = new TextDecoder().decode(bytes.subarray(0, bytes.indexOf(0)));
  const line = before.split('\n').length;
  const column = before.length - before.lastIndexOf('\n');
  return problemAt(
    { file, line, column },
    'file/not-utf8',
    'the file is not UTF-8: it has zero bytes, as UTF-16 has',
    'save the file as "UTF-8" (in a spreadsheet: "CSV UTF-8")',
  );
}

function firstBadByte(bytes: Uint8Array): { line: number; column: number; byte: number } {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let from = 0;
  let line = 1;
  for (;;) {
    const end = bytes.indexOf(0x0a, from);
    const row = bytes.subarray(from, end === -1 ? undefined : end);
    try {
      decoder.decode(row);
    } catch {
      const good = longestGoodPrefix(row);
      return { line, column: good.characters + 1, byte: row[good.bytes] ?? 0 };
    }
    if (end === -1) return { line, column: 1, byte: 0 };
    from = end + 1;
    line++;
  }
}

function longestGoodPrefix(row: Uint8Array): { bytes: number; characters: number } {
  for (let length = row.length - 1; length > 0; length--) {
    try {
      const text = new TextDecoder('utf-8', { fatal: true }).decode(row.subarray(0, length));
      return { bytes: length, characters: text.length };
    } catch {
      // A shorter part may still be good.
    }
  }
  return { bytes: 0, characters: 0 };
}
