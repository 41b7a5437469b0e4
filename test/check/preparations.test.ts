import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const work = (text: string) => ({ 'press/ledger/preparations.yaml': text });
const row = (rest: string) =>
  work(`- id: w-1
  date: 2025-03-12
  parts: [gib]
  kind: blasting
  what: To clean metal
${rest}`);

describe('a preparation', () => {
  it('may be sent out to a place, with the days it was due and back', async () => {
    const files = row('  out: true\n  place: A yard\n  due: 2025-03-20\n  back: 2025-04-12\n');
    expect(await check(files)).toBe('');
  });

  it('is not back, and not due, before it began', async () => {
    const found = await check(row('  out: true\n  due: 2025-03-11\n  back: 2025-03-10\n'));
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/preparations.yaml:7:8
        due: "2025-03-11" is before date (2025-03-12)
        → swap them, or correct the wrong one
      press/ledger/preparations.yaml:8:9
        back: "2025-03-10" is before date (2025-03-12)
        → swap them, or correct the wrong one"
    `);
  });

  it('is not back in the future', async () => {
    const found = await check(row('  out: true\n  back: 2025-06-16\n'));
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:6:11
        fitted: "2025-04-12" for "gib", which was prepared from 2025-03-12 (w-1) and came back on 2025-06-16
        → correct "fitted", or "back" of "w-1"
      press/ledger/preparations.yaml:7:9
        back: "2025-06-16" is in the future (today is 2025-06-15)
        → write the day it happened; "2024-06-16"?"
    `);
  });

  it('has no place when it was done here', async () => {
    expect(await check(row('  place: A yard\n  back: 2025-03-20\n'))).toMatchInlineSnapshot(`
      "press/ledger/preparations.yaml:6:10
        place: the preparation "w-1" has one, and was not sent out
        → write out: true, or take the place out"
    `);
  });

  it('is back before its part is fitted', async () => {
    expect(await check(row('  out: true\n  back: 2025-04-13\n'))).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:6:11
        fitted: "2025-04-12" for "gib", which was prepared from 2025-03-12 (w-1) and came back on 2025-04-13
        → correct "fitted", or "back" of "w-1""
    `);
  });

  it('that never came back has no part fitted', async () => {
    expect(await check(row('  out: true\n'))).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:6:11
        fitted: "2025-04-12" for "gib", which was prepared from 2025-03-12 (w-1) and is not back
        → write the day it came back as "back" of "w-1""
    `);
  });

  it('may begin after its part was fitted: it came off again', async () => {
    const files = work(`- id: w-1
  date: 2025-04-13
  parts: [gib]
  kind: repair
  what: Planed once more
  out: true
`);
    expect(await check(files)).toBe('');
  });
});

describe('a search that ended in buying', () => {
  const searches = (part: string) => ({
    'press/ledger/searches.csv': `id,date,part,result,price
s-001,2025-03-05,${part},bought,14.00
`,
  });

  it('is worth a warning when its part was neither ordered nor got', async () => {
    expect(await check(searches('nut'))).toMatchInlineSnapshot(`
      "press/ledger/searches.csv:2:22 (warning)
        result: "bought", and the part "nut" was neither ordered nor got
        → write ordered: 2025-03-05 or the day it was got to "nut" in ledger/parts"
    `);
  });

  it('is right when the part was got', async () => {
    expect(await check(searches('gib'))).toBe('');
  });
});
