import { describe, expect, it } from 'vitest';
import { check } from './content-folder.ts';
import { derived, raised } from './derived-files.ts';

describe('a calculation', () => {
  it('may be one of the library, or a formula of its own', async () => {
    expect(await check(derived('calc: eccentricity', 'inputs: { TIR: ram-play }'))).toBe('');
    expect(await check(derived('formula: p/2', 'inputs: { p: ram-play }'))).toBe('');
    expect(await check(raised('600', '2400'))).toBe('');
  });

  it('has a name that is known, and the one that was meant is offered', async () => {
    const found = await check(derived('calc: excentricity', 'inputs: { TIR: ram-play }'));
    expect(found).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:7:9
        calc: there is no calculation "excentricity"
        → did you mean "eccentricity"?"
    `);
  });

  it('gives the quantity of its spec', async () => {
    const found = await check(derived('calc: sheet-loss', 'inputs: { t_nom: 1 mm, t: ram-play }'));
    expect(found).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:7:9
        calc: sheet-loss gives a ratio, and this spec is a length
        → write "quantity: ratio""
    `);
  });

  it('has the inputs it needs, and no others', async () => {
    expect(await check(derived('calc: eccentricity', 'inputs: {}'))).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:8:11
        inputs.TIR: eccentricity needs "TIR" (total indicator reading)
        → add TIR: a spec's id, or a value like "1 mm""
    `);
    const found = await check(derived('calc: eccentricity', 'inputs: { tir: ram-play }'));
    expect(found).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:8:18
        inputs.tir: eccentricity has no input "tir"
        → did you mean "TIR"?"
    `);
  });

  it('has inputs that exist, and of the quantity that is wanted', async () => {
    const found = await check(
      derived('calc: squareness-diagonals', 'inputs:', '  d_1: ram-pley', '  d_2: screw-torque'),
    );
    expect(found).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:9:10
        inputs.d_1: unknown spec "ram-pley"
        → did you mean "ram-play"?
      press/specs-derived.yaml:10:10
        inputs.d_2: "screw-torque" is a torque, and d_2 is a length
        → name a spec that is a length, like "ram-play""
    `);
  });

  it('has constants in units of the quantity that is wanted, a gauge with its material', async () => {
    const found = await check(
      derived('calc: place-mean', 'inputs:', '  places: [ram-play, 2 kg, 16 ga, 3]'),
    );
    expect(found).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:9:24
        inputs.places: "2 kg" is a mass, and places is a length
        → write it in m, cm, mm, µm
      press/specs-derived.yaml:9:30
        inputs.places: "16 ga" is a gauge without a material: it may be 0.0598 in of steel, 0.0635 in of galvanized, 0.0508 in of aluminium
        → write "16 ga steel" or "16 ga galvanized" or "16 ga aluminium"
      press/specs-derived.yaml:9:37
        inputs.places: "3" has no unit
        → write the unit after it, like "3 mm""
    `);
  });

  it('carries only what is one of its inputs', async () => {
    const found = await check(
      derived('formula: p/2', 'inputs: { p: ram-play }', 'carried: [p, q]'),
    );
    expect(found).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:9:16
        carried: there is no input "q"
        → did you mean "p"?"
    `);
  });

  it('is one of the two, and not missing beside inputs', async () => {
    const found = await check(
      derived('calc: eccentricity', 'inputs: { TIR: ram-play }', 'formula: TIR/2'),
    );
    expect(found).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:9:12
        formula: stands beside calc
        → keep one of the two"
    `);
    expect(await check(derived('inputs: { p: ram-play }'))).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:7:11
        the spec "half" has inputs and no calculation
        → add calc: … or formula: …"
    `);
  });
});

describe('a formula', () => {
  it('is arithmetic over its inputs', async () => {
    const found = await check(derived('formula: (p + q', 'inputs: { p: ram-play }'));
    expect(found).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:7:12
        formula: "(p + q": Parenthesis ) expected (char 7)"
    `);
    const other = await check(derived('formula: p + q', 'inputs: { p: ram-play }'));
    expect(other).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:7:12
        formula: "p + q": unknown name "q"
        → inputs are named under "inputs""
    `);
  });

  it('adds like to like, and gives the quantity of its spec', async () => {
    const inputs = 'inputs: { p: ram-play, t: screw-torque }';
    expect(await check(derived('formula: p + t', inputs))).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:7:12
        formula: "p + t": its units do not fit: "+" between m and m^2·kg·s^-2"
    `);
    expect(await check(derived('formula: p*t', inputs))).toMatchInlineSnapshot(`
      "press/specs-derived.yaml:7:12
        formula: "p*t": it gives m^3·kg·s^-2, and a length is m
        → correct the formula, or the quantity of the spec"
    `);
  });
});
