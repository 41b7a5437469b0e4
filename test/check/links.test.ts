import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';

/** Problems of the entry with a text in the place of its tally, in line 13. */
const entry = (text: string) => check({ [ENTRY]: ['<Tally />', text] });

describe('a link', () => {
  it('may lead to a record of every kind, to an https address and to a place on the page', async () => {
    const found = await entry(
      `[a](spec:ram-play) [b](part:gib) [c](phase:teardown) [d](source:press) [e](cost:c-001) [f](row:h-001)
[g](entry:2025-04-13-the-ram-slides) [h](https://shed.example/x) [i](#top) [j](mailto:ines@shed.example)`,
    );
    expect(found).toBe('');
  });

  it('with an unknown scheme is named at its place', async () => {
    expect(await entry('Its [play](speck:ram-play) is gone.')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:5
        the link "speck:ram-play" has an unknown scheme
        → did you mean "spec"?"
    `);
    expect(await entry('[run](javascript:alert)')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        the link "javascript:alert" has an unknown scheme
        → one of: spec, part, phase, source, entry, cost, row"
    `);
  });

  it('to an id that does not exist is named with the one that was meant', async () => {
    expect(await entry('The [gib](part:gibb) and the [day](row:h-003)')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:5
        unknown part "gibb"
        → did you mean "gib"?
      press/entries/2025-04-13-the-ram-slides.mdx:13:30
        unknown ledger row "h-003"
        → did you mean "h-001"?"
    `);
    expect(await entry('[then](entry:2025-04-13-the-ram-slide)')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        unknown entry "2025-04-13-the-ram-slide"
        → did you mean "2025-04-13-the-ram-slides"?"
    `);
  });

  it('that has its address further down is named there', async () => {
    expect(await entry('The [gib][1].\n\n[1]: part:gibb')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:15:1
        unknown part "gibb"
        → did you mean "gib"?"
    `);
  });

  it('to a path or an unsafe address is refused, since the page may stand anywhere', async () => {
    expect(await entry('[costs](../costs/)')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        the link "../costs/" leads nowhere from every page
        → write https://…, or spec:, part:, phase:, entry:, cost:, row: and an id"
    `);
    expect(await entry('[shop](http://shop.example/)')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:1
        the link "http://shop.example/" is not an https address
        → write "https://shop.example/""
    `);
  });
});
