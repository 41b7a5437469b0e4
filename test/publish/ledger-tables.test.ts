import { describe, expect, test } from 'vitest';
import { ledgerTables } from '../../src/publish/data/ledger-tables.ts';
import type { Cell } from '../../src/publish/data/table.ts';
import { wordsOf } from '../../src/words/words.ts';
import { projectOf, type Written } from '../book/project-of.ts';

const project = projectOf({
  project: {
    people: [{ id: 'ada', name: 'Ada Venn' }, { id: 'secret-jane' }, { id: 'secret-joe' }],
  },
  lists: {
    sources: [{ id: 'base', kind: 'base', name: 'The press' }],
    phases: [phase('strip'), { ...phase('build'), after: 'strip', 'planned-hours': '2:30' }],
    parts: [
      part('ram'),
      { ...part('table'), mass: '12.50 kg', 'new-price': '80', got: '2025-03-01' },
      { ...part('table-again'), corrects: 'table', because: 'misnamed', recorded: '2025-03-08' },
    ],
    hours: [
      {
        id: 'h-1',
        date: '2025-03-01',
        hours: '1:45',
        phase: 'strip',
        work: 'fitting',
        what: 'Apart',
      },
      {
        ...{ id: 'h-2', date: '2025-03-02', hours: '0:30', phase: 'build', work: 'fitting' },
        ...{ who: 'secret-jane', what: 'SECRET visit', withhold: 'what' },
      },
    ],
    rates: [
      { id: 'x-1', date: '2025-01-01', from: 'EUR', to: 'GBP', rate: '0.85', source: 'bank' },
    ],
    costs: [
      { ...cost('c-1', '10'), 'split-phases': 'strip:2 build:1', parts: 'ram table' },
      { ...cost('c-2', '20.00 EUR'), phase: 'build', kind: 'refund', 'tax-rate': '20 %' },
      {
        ...{ ...cost('c-3', '77.31'), phase: 'strip', 'split-parts': 'ram=70 table=7.31' },
        ...{ what: 'SECRET saddle', supplier: 'SECRET shop', receipt: 'SECRET-9' },
        withhold: 'amount what',
      },
      { ...cost('c-3b', '20.00'), phase: 'strip', withhold: 'amount' },
      { ...cost('c-3c', '9.00'), phase: 'strip', withhold: 'amount' },
      { ...cost('c-4', '5'), phase: 'strip' },
      {
        ...cost('c-5', '6'),
        phase: 'strip',
        corrects: 'c-4',
        because: 'misread',
        recorded: '2025-03-09',
      },
    ],
    orders: [
      order('o-1'),
      { ...order('o-2'), corrects: 'o-1', because: 'dearer', recorded: '2025-03-09' },
    ],
    budgets: [{ id: 'b-1', date: '2025-03-01', amount: '5' }],
    withdrawals: [
      { id: 'w-1', date: '2025-03-10', row: 'b-1', because: 'dreamt' },
      { id: 'w-2', date: '2025-03-10', row: 'c-3c', because: 'SECRET' },
    ],
    specs: [
      { ...spec('play'), max: '0.10 mm' },
      { ...spec('half'), formula: '-p/2', inputs: { p: 'play' } },
      { ...spec('more'), formula: 'p + c', inputs: { p: 'play', c: '-3 mm' } },
    ],
    instruments: [{ id: 'rule', name: 'Rule', quantity: 'length', serial: 'SECRET-SERIAL' }],
    readings: [
      {
        ...{
          id: 'r-1',
          date: '2025-03-01',
          spec: 'play',
          state: 'as-found',
          values: '0.40 4.0 0.42',
        },
        ...{ unit: 'mm', instrument: 'rule', excluded: '2', because: 'slipped', by: 'ada' },
        ...{ conditions: 'SECRET place', withhold: 'conditions by' },
      },
    ],
  },
  entries: [
    {
      ...{ title: 'One', date: '2025-03-01', phase: 'strip', summary: 'Begun.' },
      tells: 'h-1 r-1',
    },
  ],
});

function phase(id: string): Written {
  const plan = { 'planned-start': '2025-03-01', 'planned-finish': '2025-04-01' };
  return { id, name: id, summary: id, 'planned-hours': '10:00', ...plan };
}
function part(id: string): Written {
  return { id, name: id, system: 'press', source: 'base' };
}
function order(id: string): Written {
  const facts = {
    category: 'part',
    phase: 'strip',
    what: 'Belt',
    supplier: 'SECRET',
    parts: 'ram',
  };
  return { id, date: '2025-03-04', amount: '5', ...facts };
}
function spec(id: string): Written {
  return { id, name: id, about: id, quantity: 'length', unit: 'mm', system: 'press' };
}
function cost(id: string, amount: string): Written {
  return { id, date: '2025-03-03', amount, category: 'part', what: id };
}

/** Rows of a table as objects, empty cells left out. */
function rowsOf(name: string) {
  const table = ledgerTables(project, wordsOf('en')).find((item) => item.name === name);
  if (table === undefined) throw new Error(`no table ${name}`);
  return table.rows.map((cells) => {
    const named = cells.map((cell, index) => [table.columns[index]?.name, cell] as const);
    return Object.fromEntries(named.filter(([, cell]) => cell !== undefined)) as Record<
      string,
      Cell
    >;
  });
}

describe('ledgerTables', () => {
  test('writes durations in minutes, and whoever has no public name as helper', () => {
    expect(rowsOf('hours')).toEqual([
      {
        ...{ id: 'h-1', date: '2025-03-01', minutes: 105, phase: 'strip', work: 'fitting' },
        ...{ who: 'ada', what: 'Apart', in_totals: true },
      },
      {
        ...{ id: 'h-2', date: '2025-03-02', minutes: 30, phase: 'build', work: 'fitting' },
        ...{ who: 'helper', in_totals: true },
      },
    ]);
    expect(rowsOf('people')).toEqual([
      { id: 'ada', name: 'Ada Venn' },
      { id: 'helper', name: 'helper' },
    ]);
    expect(rowsOf('phases')[1]).toMatchObject({ planned_minutes: 150 });
  });

  test('writes an amount with its currency, and what it counts for with its sign', () => {
    expect(rowsOf('costs')[0]).toMatchObject({
      amount: '10.00',
      amount_currency: 'GBP',
      counted: 1000,
    });
    expect(rowsOf('costs')[1]).toMatchObject({
      ...{ amount: '20.00', amount_currency: 'EUR', kind: 'refund', tax_rate: '20' },
      ...{ rate: 'x-1', counted: -1700, in_totals: true },
    });
  });

  test('shares a cost over its phases and parts, nothing lost', () => {
    expect(rowsOf('cost_phases').slice(0, 3)).toEqual([
      { cost: 'c-1', position: 1, phase: 'strip', counted: 667 },
      { cost: 'c-1', position: 2, phase: 'build', counted: 333 },
      { cost: 'c-2', position: 1, phase: 'build', counted: -1700 },
    ]);
    expect(rowsOf('cost_parts').slice(0, 2)).toEqual([
      { cost: 'c-1', position: 1, part: 'ram', counted: 500 },
      { cost: 'c-1', position: 2, part: 'table', counted: 500 },
    ]);
  });

  test('gives withheld amounts as one row for each category, and no share of them', () => {
    expect(rowsOf('costs').map(({ id }) => id)).toEqual([
      'c-1',
      'c-2',
      'c-4',
      'c-5',
      'withheld-part',
    ]);
    expect(rowsOf('costs').at(-1)).toMatchObject({
      amount: '97.31',
      counted: 9731,
      in_totals: true,
    });
    for (const name of ['cost_phases', 'cost_parts', 'entry_tells', 'rows', 'withdrawals'])
      expect(rowsOf(name).filter((row) => Object.values(row).includes('c-3'))).toEqual([]);
  });

  test('leaves out what else a row withholds, and says that it does', () => {
    expect(rowsOf('withheld').map(({ row, field }) => `${row} ${field}`)).toEqual([
      'h-2 what',
      'r-1 conditions',
      'r-1 by',
    ]);
  });

  test('keeps a row that was replaced, with the day, out of the totals', () => {
    const [, , old, correction] = rowsOf('costs');
    expect(old).toMatchObject({
      id: 'c-4',
      counted: 500,
      in_totals: false,
      stands_until: '2025-03-09',
    });
    expect(correction).toMatchObject({
      ...{ id: 'c-5', corrects: 'c-4', because: 'misread', counted: 600, in_totals: true },
    });
    expect(rowsOf('orders').map(({ id, corrects }) => [id, corrects])).toEqual([
      ['o-1', undefined],
      ['o-2', 'o-1'],
    ]);
    expect(rowsOf('parts').map(({ id, corrects }) => [id, corrects])).toEqual([
      ['ram', undefined],
      ['table', undefined],
      ['table-again', 'table'],
    ]);
    expect(rowsOf('withdrawals')).toEqual([
      { id: 'w-1', date: '2025-03-10', row: 'b-1', because: 'dreamt' },
    ]);
    expect(rowsOf('budgets')).toMatchObject([
      { id: 'b-1', amount: '5.00', stands_until: '2025-03-10' },
    ]);
    expect(rowsOf('order_parts')[0]).toEqual({ order: 'o-1', position: 1, part: 'ram' });
  });

  test('holds nothing private or withheld in any cell', () => {
    const cells = ledgerTables(project, wordsOf('en')).flatMap(({ rows }) => rows.flat());
    expect(cells.length).toBeGreaterThan(300);
    expect(
      cells.filter((cell) => /secret|7731|77\.31|\b7000\b|\b731\b/i.test(String(cell))),
    ).toEqual([]);
  });

  test('has no column for a private field', () => {
    const names = ledgerTables(project, wordsOf('en')).flatMap(({ columns }) =>
      columns.map(({ name }) => name),
    );
    for (const name of ['supplier', 'receipt', 'serial']) expect(names).not.toContain(name);
    expect(
      ledgerTables(project, wordsOf('en')).find(({ name }) => name === 'searches')?.columns,
    ).not.toContainEqual(expect.objectContaining({ name: 'place' }));
  });

  test('keeps the digits of raw values, and says which count', () => {
    expect(rowsOf('reading_values')).toEqual([
      { reading: 'r-1', position: 1, value: '0.40', counts: true },
      { reading: 'r-1', position: 2, value: '4.0', counts: false },
      { reading: 'r-1', position: 3, value: '0.42', counts: true },
    ]);
    expect(rowsOf('specs')[0]).toMatchObject({ max: '0.10', max_unit: 'mm' });
    expect(rowsOf('parts')[1]).toMatchObject({
      mass: '12.50',
      mass_unit: 'kg',
      new_price: '80.00',
    });
  });

  test('puts brackets around arithmetic that a spreadsheet would run', () => {
    expect(rowsOf('specs')[1]).toMatchObject({ formula: '(-p/2)' });
    expect(rowsOf('spec_inputs')).toContainEqual({
      ...{ spec: 'more', position: 2, name: 'c', given: '(-3 mm)', carried: false },
    });
  });

  test('lists what entries tell and phases wait for, and every row with its table', () => {
    expect(rowsOf('phase_after')).toEqual([{ phase: 'build', position: 1, after: 'strip' }]);
    expect(rowsOf('entry_tells').map(({ row }) => row)).toEqual(['h-1', 'r-1']);
    expect(rowsOf('rows')).toContainEqual({ id: 'r-1', kind: 'readings' });
    expect(rowsOf('rows')).toHaveLength(3 + 2 + 1 + 5 + 1 + 2 + 1 + 1);
  });
});
