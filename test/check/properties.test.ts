import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';

/** Problems of the entry with a text in the place of its tally, in line 13. */
const entry = (text: string) => check({ [ENTRY]: ['<Tally />', text] });

describe('a property', () => {
  it('names an id that exists, and is found on its own line', async () => {
    expect(await entry('<Change\n  of={["ram-play", "ram-pley"]}\n/>')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:14:3
        unknown spec "ram-pley"
        → did you mean "ram-play"?"
    `);
    expect(await entry('<Costs phase="rebild" source="spare" />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:8
        unknown phase "rebild"
        → did you mean "rebuild"?
      press/entries/2025-04-13-the-ram-slides.mdx:13:23
        unknown source "spare"
        → one of: press, spare-press"
    `);
    expect(await entry('<Parts system="rum" />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:8
        unknown system "rum"
        → did you mean "ram"?"
    `);
  });

  it('is one of the words it may be', async () => {
    expect(await entry('<Parts state="fited" />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:8
        <Parts> state: unknown word "fited"
        → did you mean "fitted"?"
    `);
    expect(await entry('<Costs category="parts" />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:8
        <Costs> category: unknown word "parts"
        → did you mean "part"?"
    `);
  });

  it('is written out: nothing is computed in an entry', async () => {
    expect(await entry('<Spec of={"ram-" + "play"} />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:7
        <Spec> of: {"ram-" + "play"} is not a plain text
        → write of="…""
    `);
    expect(await entry('<Change of={ids} />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:9
        <Change> of: {ids} is not a plain text
        → write of="…" or of={["…", "…"]}"
    `);
    expect(await entry('<Spec of={["ram-play", "screw-torque"]} />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:7
        <Spec> of: {["ram-play", "screw-torque"]} is not a plain text
        → write of="…""
    `);
    expect(await entry('<Spec of={["ram-play"]} />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:7
        <Spec> of: {["ram-play"]} is not a plain text
        → write of="…""
    `);
    expect(await entry('<Change of={[]} />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:9
        <Change> of: {[]} is not a plain text
        → write of="…" or of={["…", "…"]}"
    `);
    expect(await entry('<Change of={["ram-play", 3]} />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:9
        <Change> of: {["ram-play", 3]} is not a plain text
        → write of="…" or of={["…", "…"]}"
    `);
    expect(await entry('<Spec of={3} />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:7
        <Spec> of: {3} is not a plain text
        → write of="…""
    `);
    expect(await entry('<Spec of />')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:7
        <Spec> of: true is not a plain text
        → write of="…""
    `);
  });

  it('of plain HTML is written out too', async () => {
    expect(await entry('Grade <abbr title={process.env.HOME}>8.8</abbr>')).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:13
        <abbr> title: {process.env.HOME} is not a plain text
        → write title="…""
    `);
    expect(await entry('Grade <abbr title="tensile 800 MPa">8.8</abbr>')).toBe('');
  });
});
