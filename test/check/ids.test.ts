import { describe, expect, it } from 'vitest';
import { check, problemsOf } from './content-folder.ts';

it('a row id that stands in another row kind is named where it stands the second time, with a free one', async () => {
  const found = await check({ 'press/ledger/costs.csv': ['c-001', 'h-001'] });
  expect(found).toMatchInlineSnapshot(`
    "press/ledger/costs.csv:2:1
      the id "h-001" stands already at press/ledger/hours.csv:2
      → write a free one, like "h-003""
  `);
});

it('each of several duplicates gets a free id of its own', async () => {
  const found = await check({
    'press/ledger/hours.csv': `id,date,hours,phase,work,what
h-001,2025-03-02,1:00,teardown,clean,Frame
h-001,2025-03-03,1:00,teardown,clean,Bed
h-002,2025-03-04,1:00,teardown,clean,Screw
h-001,2025-03-05,1:00,teardown,clean,Nut
`,
  });
  expect(found).toMatchInlineSnapshot(`
    "press/ledger/hours.csv:3:1
      the id "h-001" stands already at press/ledger/hours.csv:2
      → write a free one, like "h-003"
    press/ledger/hours.csv:5:1
      the id "h-001" stands already at press/ledger/hours.csv:2
      → write a free one, like "h-004""
  `);
});

it('a word that is taken gets a number', async () => {
  const found = await check({ 'press/ledger/parts.yaml': ['id: nut', 'id: gib'] });
  expect(found).toMatchInlineSnapshot(`
    "press/ledger/parts.yaml:7:7
      the id "gib" stands already at press/ledger/parts.yaml:1
      → write a free one, like "gib-2""
  `);
});

it('definitions are unique in their kind', async () => {
  const found = await check({
    'press/instruments.yaml': ['- id: torque-wrench', '- id: dial-indicator'],
  });
  expect(found).toMatchInlineSnapshot(`
    "press/instruments.yaml:5:7
      the id "dial-indicator" stands already at press/instruments.yaml:1
      → write a free one, like "dial-indicator-2""
  `);
});

it('the same id in two kinds of definition is no mistake', async () => {
  // `press` is the project, its base source, and here a spec and an instrument too.
  const found = await check({
    'press/specs.yaml': ['- id: screw-torque', '- id: press'],
    'press/instruments.yaml': ['- id: torque-wrench', '- id: press'],
  });
  expect(found).toBe('');
});

it('files of one kind share their ids', async () => {
  const found = await check({
    'press/ledger/hours-june.yaml': `- id: h-002
  date: 2025-06-01
  hours: 1:00
  phase: rebuild
  work: fit
  what: Greased the screw
`,
  });
  expect(found).toMatchInlineSnapshot(`
    "press/ledger/hours-june.yaml:1:7
      the id "h-002" stands already at press/ledger/hours.csv:3
      → write a free one, like "h-003""
  `);
});

describe('ids that nobody could count on', () => {
  const rows = (ids: readonly string[]) => ({
    'press/ledger/hours.csv': `id,date,hours,phase,work,what\n${ids
      .map((id) => `${id},2025-03-02,0:01,teardown,clean,x\n`)
      .join('')}`,
    'press/entries/2025-04-13-the-ram-slides.mdx': ['h-002, ', ''] as const,
  });

  it('of more digits than a number has are told apart', async () => {
    const nines = `h-${'9'.repeat(20)}`;
    const problems = await problemsOf(rows([nines, nines, nines, nines]));
    expect(problems.map(({ code }) => code)).toEqual(Array(3).fill('id/duplicate'));
    expect(new Set(problems.map(({ fix }) => fix)).size).toBe(3);
  });

  it('that are one throughout a long table take no longer than its length', async () => {
    const started = performance.now();
    const problems = await problemsOf(rows(Array(20_000).fill('h-001')));
    expect(problems.filter(({ code }) => code === 'id/duplicate')).toHaveLength(19_999);
    expect(performance.now() - started).toBeLessThan(30_000);
  });

  it('longer than an address can be are refused', async () => {
    const found = await problemsOf(rows(['a'.repeat(101), 'a'.repeat(100)]));
    expect(found.map(({ code, message }) => [code, message.slice(-25)])).toEqual([
      ['value/id', 'is longer than 100 letters'.slice(-25)],
    ]);
  });
});
