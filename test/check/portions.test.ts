import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const heading = 'id,date,amount,tax,tax-rate,category,split-phases,what';
const split = (portions: string, amount = '30.00', tax = ',') =>
  check({
    'press/ledger/costs.csv': `${heading}\nc-001,2025-03-01,${amount},${tax},part,${portions},It\n`,
  });

describe('portions', () => {
  it('are by weight or by amount', async () => {
    expect(await split('teardown:2 rebuild:1')).toBe('');
    expect(await split('teardown rebuild:0.5')).toBe('');
    expect(await split('teardown=20.00 rebuild=10.00')).toBe('');
  });

  it('that name one phase twice are refused', async () => {
    expect(await split('teardown:2 teardown:1')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:2:31
        split-phases: "teardown" stands twice
        → write it once"
    `);
  });

  it('by weight and by amount are not mixed', async () => {
    expect(await split('teardown:2 rebuild=10.00')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:2:31
        split-phases: weights and amounts are mixed
        → write all with ":" or all with "=""
    `);
  });

  it('that are all nothing are refused, one nothing is not', async () => {
    expect(await split('teardown:0 rebuild:0')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:2:31
        split-phases: all portions are nothing
        → give at least one a weight above 0"
    `);
    expect(await split('teardown:0 rebuild:1')).toBe('');
    expect(await split('teardown=0 rebuild=30')).toBe('');
  });

  it('by amount add up to the row, to the penny', async () => {
    expect(await split('teardown=20.00 rebuild=9.99')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:2:31
        split-phases: the amounts add up to 29.99, the row to 30.00
        → correct the one that is wrong"
    `);
  });

  it('by amount add up to the row with the tax that comes on top', async () => {
    expect(await split('teardown=26.00 rebuild=10.00', '30.00', 'outside,20 %')).toBe('');
    expect(await split('teardown=20.00 rebuild=10.00', '30.00', 'inside,20 %')).toBe('');
    const found = await split('teardown=20.00 rebuild=10.00', '30.00', 'outside,20 %');
    expect(found).toContain('the amounts add up to 30.00, the row to 36.00');
  });

  it('by amount have the decimals of the currency', async () => {
    expect(await split('teardown=20.005 rebuild=9.995')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:2:31
        split-phases: an amount has more decimals than GBP has
        → write whole minor units"
    `);
  });

  it('written otherwise are refused', async () => {
    expect(await split('teardown:2 rebuild-1/3')).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:2:31
        split-phases.1: "rebuild-1/3" is not a portion
        → write id:weight like floor:2, or id=amount like floor=20.00"
    `);
  });

  it('of parts are held to the same rules', async () => {
    const found = await check({
      'press/ledger/costs.csv': `id,date,amount,category,phase,split-parts,what
c-001,2025-03-01,30.00,part,rebuild,gib=20.00 nut=11.00,It
`,
    });
    expect(found).toContain('split-parts: the amounts add up to 31.00, the row to 30.00');
  });
});
