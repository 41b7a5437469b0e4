import type { encodings } from '../model/imports.ts';

export type Encoding = (typeof encodings)[number];

/** Why a file can't be read as it is, with the command that mends it; undefined when it can. */
export function charsetRefusal(
  bytes: Uint8Array,
  encoding: Encoding,
  file: string,
  /** Whether a mapping may name another encoding. */
  choice = true,
): string | undefined {
  if (bytes[0] === 0x50 && bytes[1] === 0x4b)
    return `${file} is a workbook or an archive. Save its sheet as "CSV UTF-8" and import that.`;
  const wide = wideEncoding(bytes);
  if (wide) return `${file} is ${wide}. Make it UTF-8: ${iconv(wide, file)}`;
  if (encoding !== 'utf-8' || isUtf8(bytes)) return undefined;
  const { line, byte } = firstBad(bytes);
  const shown = `0x${byte.toString(16).toUpperCase()}`;
  return [
    `${file} is not UTF-8: byte ${shown} on line ${line} fits no character.`,
    choice
      ? `Say what it is in its mapping (Windows programs in Western Europe: "encoding: windows-1252"),\nor make it UTF-8:`
      : 'Make it UTF-8 (from a Windows program in Western Europe):',
    iconv('WINDOWS-1252', file),
  ].join('\n');
}

/** Reads bytes of a file in its encoding, in Unicode normal form C. */
export function textReader(encoding: Encoding): (bytes: Uint8Array) => string {
  const decoder = new TextDecoder(encoding);
  return (bytes) => decoder.decode(bytes).normalize('NFC');
}

/** Text that is written into a file of an encoding, where nothing but UTF-8 is written here. */
export function textBytes(text: string, encoding: Encoding): Uint8Array {
  const plain = encoding === 'utf-8' ? text : text.replace(/[^\t\n\r -~]/gu, '?');
  return new TextEncoder().encode(plain);
}

function wideEncoding(bytes: Uint8Array): string | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'UTF-16LE';
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return 'UTF-16BE';
  const head = bytes.subarray(0, 64);
  if (!head.includes(0)) return undefined;
  return head[0] === 0 ? 'UTF-16BE' : 'UTF-16LE';
}

function iconv(from: string, file: string): string {
  const quoted = `'${file.replaceAll("'", "'\\''")}'`;
  return `iconv -f ${from} -t UTF-8 ${quoted} > ${quoted.replace(/(\.\w+)?'$/, "-utf8$1'")}`;
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

/** A byte below 0x80 is never part of a longer character, so lines can be tried one by one. */
function firstBad(bytes: Uint8Array): { line: number; byte: number } {
  for (let from = 0, line = 1; from < bytes.length; line++) {
    const end = bytes.indexOf(0x0a, from);
    const row = bytes.subarray(from, end === -1 ? undefined : end);
    if (!isUtf8(row)) return { line, byte: row.find((byte) => byte > 0x7f) ?? 0 };
    from = end === -1 ? bytes.length : end + 1;
  }
  return { line: 1, byte: 0 };
}
