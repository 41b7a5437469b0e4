import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';

describe('an id that no record has', () => {
  it('is named at its cell, with the id that was meant', async () => {
    const found = await check({ 'press/ledger/hours.csv': ['5:00,teardown', '5:00,teardwon'] });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:3:23
        unknown phase "teardwon"
        → did you mean "teardown"?"
    `);
  });

  it('is named with the whole choice when none is near and there are few', async () => {
    const found = await check({ 'press/ledger/costs.csv': ['spare-press', 'barn-sale'] });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:37
        unknown source "barn-sale"
        → one of: press, spare-press"
    `);
  });

  it('is named with the place where it would be added when there is nothing to choose from', async () => {
    const found = await check({
      'press/sources.yaml': undefined,
      'press/ledger/parts.yaml': undefined,
      'press/ledger/searches.csv': undefined,
      'press/ledger/costs.csv': ['spare-press,gib', 'spare-press,'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:2:39
        unknown source "press"
        → add it to sources.yaml or sources.csv
      press/ledger/costs.csv:3:37
        unknown source "spare-press"
        → add it to sources.yaml or sources.csv"
    `);
  });

  it('is found in a list in one cell, at the cell', async () => {
    const found = await check({
      'press/ledger/costs.csv': ['spare-press,gib', 'spare-press,gib nuts'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/costs.csv:3:49
        unknown part "nuts"
        → did you mean "nut"?"
    `);
  });

  it('is found in a YAML list, at its item', async () => {
    const found = await check({
      'press/phases.yaml': ['[teardown]', '[teardown,\n    paint]'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/phases.yaml:14:5
        unknown phase "paint"
        → one of: teardown, rebuild"
    `);
  });

  it('may be a kind of work or a person, which stand in project.yaml', async () => {
    const found = await check({
      'press/ledger/hours.csv': ['fit,helper-one', 'fitting,helper-two'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:3:32
        unknown kind of work "fitting"
        → one of: clean, fit
      press/ledger/hours.csv:3:40
        unknown person "helper-two"
        → did you mean "helper-one"?"
    `);
  });

  it('may be the spec or the instrument of a reading', async () => {
    const found = await check({
      'press/ledger/readings.csv': `id,spec,date,state,values,unit,instrument
r-001,ram-pley,2025-03-02,as-found,0.41,mm,dial-indicater
r-002,ram-play,2025-04-13,after,0.08,mm,dial-indicator
`,
      [ENTRY]: ['<Change of="ram-play" />', ''],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/readings.csv:2:7
        unknown spec "ram-pley"
        → did you mean "ram-play"?
      press/ledger/readings.csv:2:44
        unknown instrument "dial-indicater"
        → did you mean "dial-indicator"?"
    `);
  });

  it('may be the part of a search', async () => {
    const found = await check({ 'press/ledger/searches.csv': ['gib', 'gibb'] });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/searches.csv:2:18
        unknown part "gibb"
        → did you mean "gib"?"
    `);
  });
});

describe('an entry’s front matter', () => {
  it('names a phase that exists', async () => {
    expect(await check({ [ENTRY]: ['phase: rebuild', 'phase: rebild'] })).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:4:8
        unknown phase "rebild"
        → did you mean "rebuild"?"
    `);
  });

  it('tells only of ledger rows that exist', async () => {
    expect(await check({ [ENTRY]: ['h-002', 'h-020'] })).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:6:9
        unknown ledger row "h-020"
        → did you mean "h-002"?"
    `);
  });

  it('may tell of a row of any kind', async () => {
    expect(await check({ [ENTRY]: ['h-002', 'h-002, c-001, gib, s-001'] })).toBe('');
  });

  it('points its moments at specs and parts that exist', async () => {
    const found = await check({
      [ENTRY]: [
        'tells:',
        `video: https://clips.example/7
moments:
  - at: 0:40
    label: Before
    spec: ram-ploy
  - at: 4:32
    label: After
    part: gob
tells:`,
      ],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:10:11
        unknown spec "ram-ploy"
        → did you mean "ram-play"?
      press/entries/2025-04-13-the-ram-slides.mdx:13:11
        unknown part "gob"
        → did you mean "gib"?"
    `);
  });
});

describe('the spaces around an id', () => {
  it('are no part of it', async () => {
    const found = await check({
      'press/ledger/parts.yaml': ['source: press', 'source: "press "'],
      'press/phases.yaml': ['[teardown]', '|\n    teardown'],
    });
    expect(found).toBe('');
  });
});
