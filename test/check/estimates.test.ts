import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const nut = (lines: string) =>
  check({ 'press/ledger/parts.yaml': ['  name: Bronze nut\n', `  name: Bronze nut\n${lines}`] });

describe('an estimate', () => {
  it('between its lowest and its highest is fine, and so is one at either', async () => {
    expect(await nut('  estimate: 40\n  estimate-low: 30\n  estimate-high: 55\n')).toBe('');
    expect(await nut('  estimate: 40\n  estimate-low: 40\n  estimate-high: 40\n')).toBe('');
  });

  it('below its lowest is told at the lowest', async () => {
    expect(await nut('  estimate: 40\n  estimate-low: 40.01\n')).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:10:17
        estimate-low: "40.01" is more than the estimate (40)
        → write at most 40"
    `);
  });

  it('above its highest is told at the highest', async () => {
    expect(await nut('  estimate: 40\n  estimate-high: 39.99\n')).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:10:18
        estimate-high: "39.99" is less than the estimate (40)
        → write at least 40"
    `);
  });

  it('that has ends and no middle is told at each end', async () => {
    expect(await nut('  estimate-low: 30\n  estimate-high: 55\n')).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:9:17
        estimate-low: "30" has no estimate beside it
        → fill in "estimate"
      press/ledger/parts.yaml:10:18
        estimate-high: "55" has no estimate beside it
        → fill in "estimate""
    `);
  });
});
