import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

describe('a field', () => {
  it('that is unknown in YAML is named at its key, with the one that was meant', async () => {
    const found = await check({ 'press/specs.yaml': ['better: lower', 'beter: lower'] });
    expect(found).toMatchInlineSnapshot(`
      "press/specs.yaml:8:3
        unknown field "beter"
        → did you mean "better"?"
    `);
  });

  it('that is unknown in CSV is named once, at its heading', async () => {
    const found = await check({
      'press/ledger/searches.csv': `id,date,part,result,colour
s-001,2025-03-05,gib,none,red
s-002,2025-03-06,gib,none,blue
`,
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/searches.csv:1:21
        unknown field "colour"
        → one of: id, date, recorded, part, result, price, place, note, withhold, corrects, because"
    `);
  });

  it('that is unknown inside a group is named with the fields of that group', async () => {
    const found = await check({
      'press/project.yaml': ['  year: 1931', '  year: 1931\n  wheels: 2'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/project.yaml:7:3
        unknown field "wheels"
        → one of: maker, model, year, kind, identity"
    `);
  });

  it('that is misspelt is not also missing', async () => {
    const found = await check({ 'press/ledger/parts.yaml': ['system: screw', 'sytem: screw'] });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:9:3
        unknown field "sytem"
        → did you mean "system"?"
    `);
  });

  it('that is unknown beside a known one that is wrong hides nothing', async () => {
    const found = await check({
      'press/ledger/parts.yaml': ['got: 2025-03-10', 'got: 10 March\n  gott: 2025-03-10'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:5:8
        got: "10 March" is not a date
        → write year-month-day, like 2025-03-08
      press/ledger/parts.yaml:6:3
        unknown field "gott"
        → did you mean "got"?"
    `);
  });

  it('that is missing in YAML is named at its record', async () => {
    const found = await check({ 'press/ledger/parts.yaml': ['  system: screw\n', ''] });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:7:3
        "system" is missing
        → add system: …"
    `);
  });

  it('that is missing inside a group is named at the group', async () => {
    const found = await check({ 'press/project.yaml': ['  kind: fly press\n', ''] });
    expect(found).toMatchInlineSnapshot(`
      "press/project.yaml:4:3
        "machine.kind" is missing
        → add kind: …"
    `);
  });

  it('that is empty in CSV is named at its cell', async () => {
    const found = await check({ 'press/ledger/costs.csv': ['12.50', ''] });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:18
        "amount" is missing
        → fill in the column "amount""
    `);
  });

  it('that no row of a CSV file can have is named once, at the header', async () => {
    const found = await check({
      'press/ledger/searches.csv': `id,date,part
s-001,2025-03-05,gib
s-002,2025-03-06,gib
`,
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/searches.csv:1:1
        "result" is missing
        → fill in the column "result""
    `);
  });

  it('that holds a list or a group where one text is wanted is named at its value', async () => {
    const found = await check({
      'press/ledger/parts.yaml': ['name: Bronze nut', 'name: [Bronze, nut]'],
      'press/specs.yaml': ['unit: mm', 'unit:\n    symbol: mm'],
      'press/project.yaml': ['machine:', 'machine: Wendlebury press\nbuilder:'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:8:9
        name: a list stands where one text is wanted
      press/project.yaml:3:10
        machine: the text "Wendlebury press" stands where a group of fields is wanted
      press/project.yaml:5:3
        builder: a group of fields stands where one text is wanted
      press/specs.yaml:6:5
        unit: a group of fields stands where one text is wanted"
    `);
  });
});
