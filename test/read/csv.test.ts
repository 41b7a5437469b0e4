import { describe, expect, it } from 'vitest';
import { readCsv, splitCsv } from '../../src/read/csv.ts';

const cells = (text: string) =>
  splitCsv(text, 'a.csv').rows.map((row) => row.map((cell) => cell.text));
const values = (text: string) => readCsv(text, 'a.csv').records.map(({ value }) => value);
const problemsIn = (text: string) =>
  readCsv(text, 'a.csv').problems.map(
    ({ line, column, code, message, fix }) => `${line}:${column} ${code} ${message} → ${fix}`,
  );

// RFC 4180 (2005) section 2, whose own examples these are.
describe('CSV as RFC 4180 section 2 has it', () => {
  it('ends every row at a line break (rule 1)', () => {
    expect(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n')).toEqual([
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
  });

  it('may lack the last line break (rule 2)', () => {
    expect(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx')).toEqual(cells('aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n'));
  });

  it('counts spaces as part of a cell (rule 4)', () => {
    expect(cells('aaa, bbb ,ccc')).toEqual([['aaa', ' bbb ', 'ccc']]);
  });

  it('may quote any cell (rule 5)', () => {
    expect(cells('"aaa","bbb","ccc"\r\nzzz,yyy,xxx')).toEqual([
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
  });

  it('may break a line and separate in a quoted cell (rule 6)', () => {
    expect(cells('"aaa","b\r\nbb","c,c"\r\nzzz,yyy,xxx')).toEqual([
      ['aaa', 'b\r\nbb', 'c,c'],
      ['zzz', 'yyy', 'xxx'],
    ]);
  });

  it('doubles a quote in a quoted cell (rule 7)', () => {
    expect(cells('"aaa","b""bb","ccc"')).toEqual([['aaa', 'b"bb', 'ccc']]);
    expect(cells('"""",""')).toEqual([['"', '']]);
  });
});

describe('CSV as spreadsheets save it', () => {
  it('may end its rows with LF alone', () => {
    expect(cells('a,b\n1,2\n')).toEqual([
      ['a', 'b'],
      ['1', '2'],
    ]);
  });

  it('may be separated by semicolons, which its header shows', () => {
    expect(values('id;hours;what\nh-1;2,5;"a; b"\n')).toEqual([
      { id: 'h-1', hours: '2,5', what: 'a; b' },
    ]);
  });

  it('may end in empty cells and in empty lines', () => {
    expect(cells('a,b,\n')).toEqual([['a', 'b', '']]);
    expect(values('id,note\nx,\n\n\n')).toEqual([{ id: 'x' }]);
  });
});

describe('a record from CSV', () => {
  it('has no field for an empty cell, and no spaces around a full one', () => {
    expect(values('id,note,what\nx,  , Frame out \n')).toEqual([{ id: 'x', what: 'Frame out' }]);
  });

  it('nests where its heading has a dot', () => {
    expect(values('id,machine.maker,machine.year\nx,W,1931\ny,,\n')).toEqual([
      { id: 'x', machine: { maker: 'W', year: '1931' } },
      { id: 'y' },
    ]);
  });

  it('takes a heading named like a part of JavaScript for a heading', () => {
    const [record] = readCsv('id,__proto__.x\na,b\n', 'a.csv').records;
    expect(Object.keys(record?.value ?? {})).toEqual(['id', '__proto__']);
    expect(Object.prototype).not.toHaveProperty('x');
  });

  it('knows where each cell, each heading and each missing column stands', () => {
    const [, second] = readCsv(
      'id,"say ""x""",what,note\na,1,"two\nlines",n\nb,"2",c,\n',
      'l.csv',
    ).records;
    const at = (field: string) => second?.placeOf([field]);
    expect(at('id')).toEqual({ file: 'l.csv', line: 4, column: 1 });
    expect(at('say "x"')).toEqual({ file: 'l.csv', line: 4, column: 3 });
    expect(at('what')).toEqual({ file: 'l.csv', line: 4, column: 7 });
    expect(at('note')).toEqual({ file: 'l.csv', line: 4, column: 9 });
    expect(at('date')).toEqual({ file: 'l.csv', line: 1, column: 1 });
    expect(second?.keyPlaceOf(['what'])).toEqual({ file: 'l.csv', line: 1, column: 16 });
  });
});

describe('a cell after a line break inside quotes', () => {
  it('has its column counted from that line’s start', () => {
    const [, row] = splitCsv('a,b,c\n"x\ny\nzz",w,v\n', 'a.csv').rows;
    expect(row?.map(({ line, column }) => `${line}:${column}`)).toEqual(['2:1', '4:5', '4:7']);
  });
});

describe('a CSV file is refused', () => {
  it('where a quote is never closed', () => {
    expect(problemsIn('id,what\nx,"Frame\ny,z\n')).toEqual([
      '2:3 csv/open-quote a quoted cell is never closed → end the cell with "',
    ]);
  });

  it('where text stands after a closing quote', () => {
    expect(problemsIn('id,what\nx,"5" bolt"\n')).toEqual([
      '2:6 csv/stray-quote " " stands after a closing quote → double every quote inside a quoted cell',
    ]);
  });

  it('where a row has more or fewer cells than the header, each time', () => {
    expect(problemsIn('id,what\nx,a,b\ny\n"q\nr"\nz,c\n')).toEqual([
      '2:1 csv/ragged 3 cells where the header has 2 → put quotes around a cell that contains a separator',
      '3:1 csv/ragged 1 cell where the header has 2 → put quotes around a cell that contains a separator',
      '4:1 csv/ragged 1 cell where the header has 2 → put quotes around a cell that contains a separator',
    ]);
    expect(values('id,what\nx,a,b\nz,c\n')).toEqual([{ id: 'z', what: 'c' }]);
  });

  it('where a column stands twice, spaces aside', () => {
    expect(problemsIn('id,what, id\nx,y,z\n')).toEqual([
      '1:9 csv/duplicate-column the column "id" stands twice → remove one of the two',
    ]);
  });

  it('where a column has no name', () => {
    expect(problemsIn('id,,what\nx,y,z\n')).toEqual([
      '1:4 csv/no-header a column has no name → name every column in the first line',
    ]);
  });
});

describe('an empty CSV file', () => {
  it('has no records', () => {
    expect(readCsv('', 'a.csv')).toEqual({ records: [], problems: [] });
    expect(values('id,what\n')).toEqual([]);
  });
});

describe('a hostile table', () => {
  it('is refused or read in the time its size takes', () => {
    const long = `${'"a"b'.repeat(1_000_000)}\n`;
    expect(readCsv(long, 'a.csv').problems.map(({ code }) => code)).toEqual(['csv/stray-quote']);
    const deep = readCsv(`${'a.'.repeat(100_000)}\n1\n`, 'a.csv');
    expect(deep.records).toHaveLength(1);
  });
});
