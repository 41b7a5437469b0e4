import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';
import { derived, HEAD, READINGS, raised, spec } from './derived-files.ts';

const ENTRY = 'press/entries/2025-04-13-the-ram-slides.mdx';

describe('a derived spec', () => {
  it('is not worked out of itself, through however many others', async () => {
    const ring = {
      'press/specs-derived.yaml': [
        spec('one', 'formula: a', 'inputs: { a: three }'),
        spec('two', 'formula: a', 'inputs: { a: one }'),
        spec('three', 'formula: a + b', 'inputs: { a: two, b: ram-play }'),
        spec('beside', 'formula: a', 'inputs: { a: three }'),
      ].join(''),
    };
    expect(await check(ring)).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:8:11
        the spec "one" is worked out of itself: one needs three needs two needs one
        → name a measured spec instead
      press/specs-derived.yaml:16:11
        the spec "two" is worked out of itself: one needs three needs two needs one
        → name a measured spec instead
      press/specs-derived.yaml:24:11
        the spec "three" is worked out of itself: one needs three needs two needs one
        → name a measured spec instead"
    `);
  });

  it('has no readings of its own', async () => {
    const found = await check({
      ...derived('formula: p/2', 'inputs: { p: ram-play }'),
      [READINGS]: `${HEAD}\nr-9,half,2025-04-13,after,0.2,mm,dial-indicator\n`,
    });
    expect(found).toMatchInlineSnapshot(`
      "press/ledger/readings-more.csv:2:5
        "half" is worked out of other specs and has no readings of its own
        → make a spec of its own for what was read"
    `);
  });

  it('is not named where a spec of that name has a mistake of its own', async () => {
    const found = await check({
      ...derived('formula: p/2', 'inputs: { p: ram-play }'),
      'press/specs.yaml': ['quantity: length', 'quantity: lenght'],
    });
    expect(found).not.toContain('specs-derived.yaml');
    expect(found).toContain('press/specs.yaml:4:13');
  });

  it('may be shown by an entry, once it has a value by that day', async () => {
    const shown = { [ENTRY]: ['<Tally />', '<Spec of="half" /> <Change of="half" />'] } as const;
    const good = derived('formula: p/2', 'inputs: { p: ram-play }');
    expect(await check({ ...good, ...shown })).toBe('');
    const torque = derived('formula: p*s', 'inputs: { p: ram-play, s: later }');
    const later = {
      'press/specs-later.yaml': spec('later').replace('length', 'ratio').replace('mm', '"1"'),
    };
    expect(await check({ ...torque, ...later, ...shown })).toMatchInlineSnapshot(`
      "press/entries/2025-04-13-the-ram-slides.mdx:13:7
        <Spec> of "half": there is no worked-out value on or before 2025-04-13
        → add the readings that it is worked out of to ledger/readings, or take the component out
      press/entries/2025-04-13-the-ram-slides.mdx:13:28
        <Change> of "half": there is no worked-out value from before the work on or before 2025-04-13
        → add the readings that it is worked out of to ledger/readings, or take the component out"
    `);
    const broken = derived('formula: p', 'inputs: { p: ram-ply }');
    expect(await check({ ...broken, ...shown })).not.toContain('component');
  });
});

describe('a day on which it means nothing is named, with the reason:', () => {
  it('a rise as large as the wheelbase', async () => {
    expect(await check(raised('2400', '2400'))).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:44:11
        the spec "height" can't be worked out for 2025-04-13: the rise is as large as the wheelbase
        → look at the readings of that day"
    `);
  });

  it('no wheelbase', async () => {
    expect(await check(raised('600', '0'))).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:44:11
        the spec "height" can't be worked out for 2025-04-13: wheelbase is not above 0
        → look at the readings of that day"
    `);
  });

  it('a load below nothing', async () => {
    expect(await check(raised('600', '2400', '-1'))).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:44:11
        the spec "height" can't be worked out for 2025-04-13: front axle load, level is not above 0
        → look at the readings of that day"
    `);
  });

  it('a division by zero in a formula of its own', async () => {
    const found = await check(derived('formula: p*p/(p - p)', 'inputs: { p: ram-play }'));
    expect(found).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:8:11
        the spec "half" can't be worked out for 2025-03-02: it has no finite result for these values
        → look at the readings of that day
      press/specs-derived.yaml:8:11
        the spec "half" can't be worked out for 2025-04-13: it has no finite result for these values
        → look at the readings of that day"
    `);
  });
});
