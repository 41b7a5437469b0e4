import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const withLines = (...lines: readonly string[]) =>
  check({
    'press/ledger/budgets.csv': [
      'id,date,recorded,amount,phase,category,contingency,corrects,because',
      ...lines,
      '',
    ].join('\n'),
  });
const teardown = 'b-001,2025-03-01,,200,teardown,,,,';

describe('a budget line', () => {
  it('is for a phase, for a category, or for what nobody foresees', async () => {
    expect(await withLines(teardown, 'b-002,2025-03-01,,50,,,true,,')).toBe('');
    expect(await withLines('b-001,2025-03-01,,200,,part,,,')).toBe('');
  });

  it('for nothing is refused', async () => {
    expect(await withLines('b-001,2025-03-01,,200,,,,,')).toMatchInlineSnapshot(`
      "press/ledger/budgets.csv:2:1
        the line "b-001" is for nothing
        → fill in "phase" or "category", or contingency: true"
    `);
  });

  it('for two things is refused', async () => {
    expect(await withLines('b-001,2025-03-01,,200,teardown,part,,,')).toMatchInlineSnapshot(`
      "press/ledger/budgets.csv:2:1
        the line "b-001" is for phase and category
        → keep one, and write a line for the other"
    `);
  });

  it('by category beside one by phase is refused', async () => {
    const found = await withLines(teardown, 'b-002,2025-03-02,,90,,part,,,');
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/budgets.csv:3:23
        category: other lines of this project are by phase
        → give it a phase instead"
    `);
  });

  it('that changes an earlier one says why', async () => {
    expect(await withLines(teardown, 'b-002,2025-04-01,,250,teardown,,,,Rust')).toBe('');
    const found = await withLines(teardown, 'b-002,2025-04-01,,250,teardown,,,,');
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/budgets.csv:3:1
        the line "b-002" changes the budget for "teardown" without "because"
        → fill in "because": why it changed"
    `);
  });

  it('that corrects an earlier one is no change, and the struck one is held against nobody', async () => {
    const struck = 'b-001,2025-03-01,,200,,part,,,';
    const found = await withLines(
      struck,
      'b-002,2025-03-01,2025-03-05,200,teardown,,,b-001,Meant the phase',
    );
    expect(found).toBe('');
  });
});
