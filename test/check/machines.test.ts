import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const HOURS = 'press/ledger/hours.csv';
const PARTS = 'press/ledger/parts.yaml';

describe('a part for sale', () => {
  it('has a day from which it is, when a price is asked', async () => {
    const asked = '  name: Bronze nut\n  asking: 12.00';
    expect(await check({ [PARTS]: ['  name: Bronze nut', asked] })).toMatchInlineSnapshot(`
      "press/ledger/parts.yaml:9:11
        asking: "12.00" has no "for-sale" beside it
        → fill in "for-sale" with the day it was first offered"
    `);
    const offered = `${asked}\n  for-sale: 2025-05-01`;
    expect(await check({ [PARTS]: ['  name: Bronze nut', offered] })).toBe('');
  });
});

describe('an hours row', () => {
  const withSource = (source: string) =>
    `id,date,hours,phase,work,who,what,source\nh-001,2025-03-02,2:30,teardown,clean,,Cleaned the frame,${source}\nh-002,2025-03-08,5:00,teardown,fit,,Screw out,\n`;

  it('names a machine that can be worked on', async () => {
    const bought = '- id: shop\n  kind: new\n  name: Bought\n- id: press';
    const sources = ['- id: press', bought] as const;
    const found = await check({ [HOURS]: withSource('shop'), 'press/sources.yaml': sources });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/hours.csv:2:57
        source: "shop" is no machine that is taken apart (its kind is "new")
        → name a base or a donor, or leave it empty"
    `);
    expect(await check({ [HOURS]: withSource('spare-press') })).toBe('');
  });
});

describe('the account of a donor in an entry', () => {
  it('is that of a donor', async () => {
    const entry = 'press/entries/2025-04-13-the-ram-slides.mdx';
    const of = (id: string) => check({ [entry]: ['<Tally />', `<Donor of="${id}" />`] });
    expect(await of('spare-press')).toBe('');
    expect(await of('press')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:8
        unknown donor machine "press"
        → one of: spare-press"
    `);
  });
});
