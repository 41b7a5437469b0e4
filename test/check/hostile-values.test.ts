import { describe, expect, test } from 'vitest';
import { problemsOf } from './content-folder.ts';

const nines = '9'.repeat(10_000_000);
const hours = (value: string) => ({ 'press/ledger/hours.csv': ['2:30', value] as const });
const phase = (field: string, value: string) => ({
  'press/phases.yaml': [
    `planned-${field}: ${field === 'hours' ? '"12:00"' : '2025-03-01'}`,
    `planned-${field}: "${value}"`,
  ] as const,
});

describe('a value larger than anything it could stand for is refused, at once', () => {
  test.each([
    ['hours', hours('9999999:00'), 'value/hours'],
    ['hours of ten million digits', hours(nines), 'value/hours'],
    ['minutes', hours(`${'9'.repeat(400)} min`), 'value/hours'],
    ['planned hours', phase('hours', `${'9'.repeat(330)}:00`), 'value/hours'],
    ['a day of another age', phase('start', '0001-01-01'), 'value/date'],
    ['a day far ahead', phase('start', '9999-12-31'), 'value/date'],
    ['an amount', { 'press/ledger/costs.csv': ['12.50', nines] as const }, 'value/amount'],
    [
      'an amount with a power of ten',
      { 'press/ledger/costs.csv': ['12.50', '1e999999'] as const },
      'value/amount',
    ],
    [
      'a reading',
      { 'press/ledger/readings.csv': ['0.41 0.42', `${nines} 0.42`] as const },
      'value/value',
    ],
    [
      'a reading with more decimals than a page can show',
      { 'press/ledger/readings.csv': ['0.41 0.42', `0.${'4'.repeat(200)} 0.42`] as const },
      'value/value',
    ],
    [
      'a limit',
      { 'press/specs.yaml': ['0.10 mm', `${'9'.repeat(400)} mm`] as const },
      'value/quantity',
    ],
    [
      'a limit with many decimals',
      { 'press/specs.yaml': ['0.10 mm', `0.${'1'.repeat(120)} mm`] as const },
      'value/quantity',
    ],
    [
      'a rate',
      {
        'press/ledger/rates.csv': `id,date,from,to,rate,source\nx-1,2025-03-01,EUR,GBP,${nines},Bank\n`,
      },
      'value/number',
    ],
    [
      'a portion',
      {
        'press/ledger/costs.csv': `id,date,amount,category,split-phases,source,what\nc-001,2025-03-01,180,vehicle,teardown:${nines} rebuild:1,press,The press\n`,
      },
      'value/portion',
    ],
    [
      'a moment',
      {
        'press/entries/2025-04-13-the-ram-slides.mdx': [
          'tells: [h-002, r-002]',
          `moments: [{ at: "${'9'.repeat(400)}:00:00", label: x }]`,
        ] as const,
      },
      'value/moment',
    ],
    [
      'where a video’s moments lead',
      {
        'site.yaml': [
          'language: en-GB',
          'language: en-GB\nmoments: "javascript:alert(1)//{address}"',
        ] as const,
      },
      'value/address',
    ],
  ])('%s', async (_, changes, code) => {
    const started = performance.now();
    const problems = await problemsOf(changes);
    expect(problems.map((problem) => problem.code)).toContain(code);
    for (const { message, fix = '' } of problems)
      expect(message.length + fix.length).toBeLessThan(1_000);
    expect(performance.now() - started).toBeLessThan(10_000);
  });
});

describe('a text that a spreadsheet would run in a published table', () => {
  const what = (text: string) =>
    problemsOf({ 'press/ledger/hours.csv': ['Screw out', `"${text}"`] });

  test.each([
    '=1+1',
    '＝1+1',
    '@SUM(A1)',
    '+cmd|x',
    'x;=1+1;y',
    'x; @SUM(A1)',
    "x;+cmd|' /C calc'!A0",
    'x;-SUM(A1)',
    'x\t=1+1',
    'x\n=1+1;y',
  ])('%j is refused', async (text) => {
    expect((await what(text)).map(({ code }) => code)).toEqual(['value/text']);
  });

  test.each([
    '2 + 2 = 4',
    'out all day ;-)',
    'a; -5 mm (left)',
    'x@y.example',
    'one\n- two (three)',
  ])('%j is not', async (text) => {
    expect(await what(text)).toEqual([]);
  });

  test('is looked for in the time its length takes', async () => {
    const started = performance.now();
    expect(await what(`x${'; -'.repeat(300_000)}`)).toEqual([]);
    expect(await what(`x;-${'a'.repeat(2_000_000)}`)).toEqual([]);
    expect(await what(`x${'; '.repeat(1_000_000)}`)).toEqual([]);
    expect(await what(`x;${' '.repeat(2_000_000)}y`)).toEqual([]);
    expect(performance.now() - started).toBeLessThan(20_000);
  });
});
