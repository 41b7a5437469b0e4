import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

/** The sound project with one cost row, in YAML so that each field has a line of its own. */
const withCost = (...fields: readonly string[]) =>
  check({
    'press/ledger/costs.csv': undefined,
    'press/ledger/costs.yaml': [
      '- id: c-001',
      ...['date: 2025-03-01', 'what: A thing', ...defaults(fields), ...fields].map(
        (field) => `  ${field}`,
      ),
      '',
    ].join('\n'),
  });
const defaults = (fields: readonly string[]) =>
  ['amount: 30.00', 'category: part'].filter(
    (line) => !fields.some((field) => field.startsWith(`${line.split(':')[0]}:`)),
  );

describe('the phase of a cost row', () => {
  it('is one, or split', async () => {
    expect(await withCost('phase: rebuild')).toBe('');
    expect(await withCost('split-phases: [teardown, rebuild]')).toBe('');
  });

  it('may not be missing', async () => {
    expect(await withCost()).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:1:3
        "phase" is missing
        → fill in "phase", or "split-phases" like floor:2 paint:1"
    `);
  });

  it('may not be given both ways', async () => {
    const found = await withCost('phase: rebuild', 'split-phases: [teardown, rebuild]');
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:6:10
        "phase" stands beside "split-phases"
        → keep one of the two"
    `);
  });

  it('exists, in a portion too', async () => {
    expect(await withCost('split-phases: [teardwn:2, rebuild:1]')).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:6:18
        unknown phase "teardwn"
        → did you mean "teardown"?"
    `);
  });
});

describe('the parts of a cost row', () => {
  it('may not be given both ways', async () => {
    const found = await withCost('phase: rebuild', 'parts: [gib]', 'split-parts: [gib:2, nut:1]');
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:7:10
        "parts" stands beside "split-parts"
        → keep one of the two"
    `);
  });
});

describe('the tax of a cost row', () => {
  it('has a side and a rate', async () => {
    expect(await withCost('phase: rebuild', 'tax: inside', 'tax-rate: 20 %')).toBe('');
    expect(await withCost('phase: rebuild', 'tax: outside', 'tax-rate: 5.5')).toBe('');
  });

  it('without a rate is refused', async () => {
    expect(await withCost('phase: rebuild', 'tax: inside')).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:7:8
        tax: "inside" has no rate
        → fill in "tax-rate", like 20 %"
    `);
  });

  it('without a side is refused', async () => {
    expect(await withCost('phase: rebuild', 'tax-rate: 20 %')).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:7:13
        tax-rate: "20 %" has no "tax" beside it
        → write inside or outside in "tax""
    `);
  });

  it('with a decimal comma is given with a point', async () => {
    const found = await withCost('phase: rebuild', 'tax: inside', 'tax-rate: "5,5 %"');
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:8:13
        tax-rate: "5,5 %" is not a share in per cent
        → write "5.5 %""
    `);
  });

  it('that is no number is refused', async () => {
    const found = await withCost('phase: rebuild', 'tax: inside', 'tax-rate: full');
    expect(found).toContain('"full" is not a share in per cent\n  → write it like 20 %');
  });
});

describe('the share of a cost row', () => {
  it('is at most the whole', async () => {
    expect(await withCost('phase: rebuild', 'share: 100 %')).toBe('');
    expect(await withCost('phase: rebuild', 'share: 100.01 %')).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:7:10
        share: "100.01 %" is more than the whole
        → write at most 100 %"
    `);
  });
});

describe('the mass of a cost row', () => {
  it('is that of scrap, in a unit of mass', async () => {
    expect(await withCost('phase: rebuild', 'kind: scrap', 'mass: 140 kg')).toBe('');
    expect(await withCost('phase: rebuild', 'kind: scrap', 'mass: 300 lb')).toBe('');
  });

  it('of something else is refused', async () => {
    expect(await withCost('phase: rebuild', 'kind: sale', 'mass: 140 kg')).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:8:9
        mass: "140 kg" stands in a row of kind "sale"
        → write "scrap" in kind, or leave the mass out"
    `);
  });

  it('in another unit is refused', async () => {
    const found = await withCost('phase: rebuild', 'kind: scrap', 'mass: 140 mm');
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:8:9
        mass: "140 mm" is no mass
        → write it in kg or lb"
    `);
  });
});

describe('what a cost row withholds', () => {
  it('is one of the fields that may be', async () => {
    expect(await withCost('phase: rebuild', 'withhold: [what, note]')).toBe('');
    expect(await withCost('phase: rebuild', 'withhold: [supplier]')).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:7:14
        withhold.0: "supplier" is not one of the words known here
        → one of: amount, what, note"
    `);
  });

  it('is a hint that the total of its category tells, when no other amount hides it', async () => {
    const found = await withCost('phase: rebuild', 'withhold: [amount]');
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.yaml:7:13 (warning)
        withhold: "c-001" is the only withheld amount of category "part", whose total tells it
        → withhold another amount of that category too, or give it the category of another"
    `);
  });

  it('is hidden beside another withheld amount of its category', async () => {
    const found = await check({
      'press/ledger/costs.csv': `id,date,amount,category,phase,what,withhold
c-001,2025-03-01,180,part,teardown,A thing,amount
c-002,2025-03-02,90,part,teardown,Another,amount
`,
    });
    expect(found).toBe('');
  });
});

describe('the rule for shop tools', () => {
  const rule = (tools: string) =>
    check({
      'press/project.yaml': ['currency: GBP', `rules:\n  tools: ${tools}\ncurrency: GBP`],
    });

  it('is in, out or a share', async () => {
    expect(await rule('in')).toBe('');
    expect(await rule('out')).toBe('');
    expect(await rule('40 %')).toBe('');
    expect(await rule('half')).toMatchInlineSnapshot(`
      "press/project.yaml:9:10
        rules.tools: "half" is not one of the words known here
        → write in, out, or a share like 40 %"
    `);
  });
});
