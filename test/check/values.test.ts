import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

describe('a value that is not of its type is shown with what to type:', () => {
  const part = (piece: string, instead: string) =>
    check({ 'press/ledger/parts.yaml': [piece, instead] });

  it('an id with capitals and spaces', async () => {
    expect(await part('id: nut', 'id: Bronze Nut')).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:7:7
        id: "Bronze Nut" is not an id
        → write "bronze-nut""
    `);
  });

  it('a word that is not in the list', async () => {
    const found = await check({ 'press/ledger/readings.csv': ['as-found', 'asfound'] });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/readings.csv:2:27
        state: "asfound" is not one of the words known here
        → did you mean "as-found"?"
    `);
  });

  it('a count that is no whole number from 1 up', async () => {
    expect(await part('system: screw', 'system: screw\n  quantity: 0')).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:10:13
        quantity: "0" is not a whole number from 1 up
        → write digits alone, like 4"
    `);
  });

  it('a text that a spreadsheet would run', async () => {
    expect(await part('Bronze nut', '"=HYPERLINK(1)"')).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:8:9
        name: "=HYPERLINK(1)" starts with "=", which a spreadsheet would run as a formula
        → start with a word"
    `);
  });

  it('a length of work with a decimal comma', async () => {
    const found = await check({ 'press/ledger/hours.csv': ['2:30', '"2,30"'] });
    const half = await check({ 'press/ledger/hours.csv': ['2:30', '"2,5"'] });
    expect(half).toContain('hours: "2,5" is not a length of work\n  → write "2.5"');
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:2:18
        hours: "2,30" is not a length of work
        → write "2:30""
    `);
  });

  it('a reading with a decimal comma, and one with its unit', async () => {
    const found = await check({
      'press/ledger/readings.csv': ['0.08 0.08 0.09', '"0,08 0.08mm 0.09"'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/readings.csv:3:33
        values.0: "0,08" is not a number
        → write "0.08"
      press/ledger/readings.csv:3:33
        values.1: "0.08mm" is not a number
        → write the number alone; its unit stands in "unit""
    `);
  });

  it('an address without https', async () => {
    const found = await check({ 'site.yaml': ['https://shed', 'http://shed'] });
    expect(found).toMatchInlineSnapshot(`
      "site.yaml:2:10
        address: "http://shed.example/" is not an https address
        → write "https://shed.example/""
    `);
  });

  it('an address with a port that is none', async () => {
    const found = await check({ 'site.yaml': ['https://shed', 'https://0:00shed'] });
    expect(found).toMatchInlineSnapshot(`
      "site.yaml:2:10
        address: "https://0:00shed.example/" is not an https address
        → write it whole, like https://example.org/"
    `);
  });

  it('a language and a time zone that do not exist', async () => {
    const found = await check({
      'site.yaml': ['en-GB', 'English please'],
      'press/project.yaml': ['Europe/London', 'Europe/Londn'],
    });
    expect(found).toMatchInlineSnapshot(`
      "press/project.yaml:9:11
        timeZone: "Europe/Londn" is no time zone
        → write an IANA name, like "Europe/London"
      site.yaml:3:11
        language: "English please" is no language tag
        → write one like "en-GB""
    `);
  });

  it('a long value, cut', async () => {
    const found = await check({ 'press/sources.yaml': ['donor', `donor ${'press '.repeat(20)}`] });
    expect(found).toMatchInlineSnapshot(`
      "press/sources.yaml:5:9
        kind: "donor press press press press press press press press pre…" is not one of the words known here
        → one of: base, donor, new, made, repaired"
    `);
  });
});
