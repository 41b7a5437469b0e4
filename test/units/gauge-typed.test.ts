import { expect, test } from 'vitest';
import { readGauge } from '../../src/units/gauge.ts';

const told = (text: string) => {
  const read = readGauge(text);
  return 'wrong' in read ? read : undefined;
};

test.each([
  ['18ga steel', 'write "18 ga steel"'],
  ['18  gauge steel', 'write "18 ga steel"'],
  [' 18 ga steel ', 'write "18 ga steel"'],
  ['18 GA. mild  steel', 'write "18 ga steel"'],
  ['20 gage Aluminum', 'write "20 ga aluminium"'],
])('%j is a gauge, but not how it is written here', (text, fix) => {
  expect(told(text)).toEqual({ wrong: 'is not how a gauge is written here', fix });
});

test.each([
  ['2 ga steel', 'steel has 3 to 38 ga'],
  ['39 ga steel', 'steel has 3 to 38 ga'],
  ['7 ga galvanized', 'galvanized has 8 to 30 ga'],
  ['31 ga galvanized', 'galvanized has 8 to 30 ga'],
  ['37 ga aluminium', 'aluminium has 3 to 36 ga'],
])('%s is outside its table', (text, range) => {
  expect(told(text)?.wrong).toBe(`is outside the table: ${range}`);
});

test('both ends of a table are in it', () => {
  for (const text of ['3 ga steel', '38 ga steel', '8 ga galvanized', '30 ga galvanized'])
    expect([text, told(text)]).toEqual([text, undefined]);
});

test('a gauge alone is told in each material that has it, the ends of the tables included', () => {
  const materials = (gauge: number) =>
    [...(told(`${gauge} ga`)?.fix ?? '').matchAll(/"\d+ ga (\w+)"/g)].map(([, name]) => name);
  expect(materials(3)).toEqual(['steel', 'aluminium']);
  expect(materials(8)).toEqual(['steel', 'galvanized', 'aluminium']);
  expect(materials(30)).toEqual(['steel', 'galvanized', 'aluminium']);
  expect(materials(36)).toEqual(['steel', 'aluminium']);
  expect(materials(38)).toEqual(['steel']);
  expect(told('39 ga')?.wrong).toBe('is a gauge without a material, and in no table');
});
