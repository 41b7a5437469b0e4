import { describe, expect, it } from 'vitest';
import { decodeText } from '../../src/read/text.ts';

const bytes = (...values: (number | string)[]) =>
  Uint8Array.from(
    values.flatMap((value) => (typeof value === 'number' ? [value] : [...Buffer.from(value)])),
  );

describe('a file’s bytes', () => {
  it('are UTF-8 text', () => {
    expect(decodeText(bytes('5 N·m at 20 °C — 😀\n'), 'a.csv')).toBe('5 N·m at 20 °C — 😀\n');
  });

  it('may start with a byte order mark, which is no part of the text', () => {
    expect(decodeText(bytes(0xef, 0xbb, 0xbf, 'id,date'), 'a.csv')).toBe('id,date');
  });

  it('mean the same whether an accent was typed with its letter or after it', () => {
    expect(decodeText(bytes('Zo\u0065\u0308'), 'a.csv')).toBe('Zo\u00eb');
  });

  it('may be none', () => {
    expect(decodeText(bytes(), 'a.csv')).toBe('');
  });
});

// Invalid sequences of The Unicode Standard 15.0, table 3-7 (well-formed UTF-8 byte sequences).
describe('bytes that are not UTF-8 are named with line and column:', () => {
  const place = (...values: (number | string)[]) => {
    const found = decodeText(bytes(...values), 'a.csv');
    return typeof found === 'string'
      ? found
      : `${found.line}:${found.column} ${/0x[0-9A-F]{2}/.exec(found.message)?.[0]}`;
  };

  it('a letter of Windows-1252', () => {
    expect(place('id\nx,Caf', 0xe9, '\ny')).toBe('2:6 0xE9');
  });

  it('a character that stops halfway, at the end of a line and of the file', () => {
    expect(place('é', 0xe2, 0x82, '\nx')).toBe('1:2 0xE2');
    expect(place('a\nb\ncd', 0xc3)).toBe('3:3 0xC3');
  });

  it('a longer form than needed, half of a surrogate pair, and a code beyond the last', () => {
    expect(place('/', 0xc0, 0xaf)).toBe('1:2 0xC0');
    expect(place(0xed, 0xa0, 0x80)).toBe('1:1 0xED');
    expect(place(0xf4, 0x90, 0x80, 0x80)).toBe('1:1 0xF4');
  });

  it('UTF-16, from its first byte on', () => {
    expect(place(0xff, 0xfe, 0x69, 0x00)).toBe('1:1 0xFF');
  });

  it('after a character of two code units, which an editor counts as two columns', () => {
    expect(place('😀', 0x80)).toBe('1:3 0x80');
  });
});

describe('the problem with a file that is not UTF-8', () => {
  it('says how to save it', () => {
    expect(decodeText(bytes('id\n', 0x93), 'press/ledger/hours.csv')).toEqual({
      level: 'error',
      code: 'file/not-utf8',
      file: 'press/ledger/hours.csv',
      line: 2,
      column: 1,
      message: 'the file is not UTF-8: byte 0x93 fits no character',
      fix: 'save the file as "UTF-8" (in a spreadsheet: "CSV UTF-8")',
    });
  });
});
