import { describe, expect, test } from 'vitest';
import { type Recipe, recipeOf } from '../../src/measure/recipe.ts';
import type { Spec } from '../../src/model/kinds.ts';
import type { Written } from '../book/project-of.ts';
import { measuredProject } from './measured-project.ts';

const read: Readonly<Record<string, Written>> = {
  base: { quantity: 'length', unit: 'mm' },
  front: { quantity: 'mass', unit: 'kg' },
  rear: { quantity: 'mass', unit: 'kg' },
  angle: { quantity: 'angle', unit: '°' },
  proof: { quantity: 'force', unit: 'kN' },
};

/** What `recipeOf` makes of a spec that stands beside those above. */
function recipe(spec: Written) {
  const { specs } = measuredProject({ specs: { ...read, out: spec } });
  const byId = new Map(specs.map((one) => [one.id, one]));
  return recipeOf(byId.get('out') as Spec, byId);
}

function sound(spec: Written): Recipe {
  const result = recipe(spec);
  if ('ready' in result) return result;
  throw new Error(result.map(({ wrong }) => wrong).join('; '));
}

/** What is wrong, as `path: wrong → fix`. */
function mistakes(spec: Written): string[] {
  const result = recipe(spec);
  if ('ready' in result) return [];
  return result.map(
    ({ path, wrong, fix }) => `${path.join('.')}: ${wrong}${fix ? ` → ${fix}` : ''}`,
  );
}

const along = { calc: 'cg-along', inputs: { L: 'base', Wf: 'front', Wr: 'rear' } };

describe('a calculation of the library', () => {
  test('takes its inputs in the order of its own names, whatever the order in the file', () => {
    const { inputs, ready, calculation } = sound({
      ...along,
      inputs: { Wr: 'rear', L: 'base', Wf: 'front' },
      carried: ['L'],
    });
    expect(calculation?.name).toBe('cg-along');
    expect(ready.names).toEqual(['L', 'Wf', 'Wr']);
    expect(inputs).toEqual([
      { from: 'spec', name: 'L', spec: 'base', carried: true },
      { from: 'spec', name: 'Wf', spec: 'front', carried: false },
      { from: 'spec', name: 'Wr', spec: 'rear', carried: false },
    ]);
  });

  test('takes a list of specs and constants, carried as one', () => {
    const { inputs, ready } = sound({
      calc: 'place-mean',
      inputs: { places: ['base', '2 ± 0.1 cm'] },
      carried: ['places'],
    });
    expect(ready.text).toBe('(x1 + x2)/2');
    expect(inputs.map(({ name, from }) => [name, from])).toEqual([
      ['x1', 'spec'],
      ['x2', 'constant'],
    ]);
    expect(inputs[0]).toMatchObject({ spec: 'base', carried: true });
    expect(inputs[1]).toMatchObject({ text: '2 ± 0.1 cm', unit: 'cm', value: { value: 0.02 } });
  });

  test('takes its own value where none is named', () => {
    const { inputs, ready } = sound({
      ...{ quantity: 'force', unit: 'kN' },
      ...{ calc: 'bolt-preload', inputs: { F_p: 'proof' } },
    });
    expect(ready.names).toEqual(['F_p', 's']);
    expect(inputs[1]).toMatchObject({ from: 'constant', text: '75 %', value: { value: 0.75 } });
  });

  test('takes constants in base units, each with a source of its own', () => {
    const { inputs } = sound({ ...along, inputs: { L: '2400 ± 3 mm', Wf: '10 lb', Wr: 'rear' } });
    expect(inputs.map((input) => input.from === 'constant' && input.value)).toEqual([
      {
        value: 2.4,
        components: [
          expect.objectContaining({
            key: 'out L stated ±',
            group: 'out L stated ±',
            u: expect.closeTo(0.003 / Math.sqrt(3), 15),
            shape: 'rectangular',
          }),
        ],
      },
      { value: expect.closeTo(4.5359237, 14), components: [] },
      false,
    ]);
    const places = ['base', '2 ± 1 mm', '2 ± 1 mm'];
    const two = sound({ calc: 'place-mean', inputs: { places } });
    const keys = two.inputs.map((one) => one.from === 'constant' && one.value.components[0]?.key);
    expect(keys).toEqual([false, 'out x2 stated ±', 'out x3 stated ±']);
  });
});

describe('a formula of its own', () => {
  test('takes its inputs as they are named, with the kinds of their specs and units', () => {
    const { inputs, ready, calculation } = sound({
      formula: 'r*sin(phi) + h',
      inputs: { phi: 'angle', r: 'base', h: '-2 mm' },
    });
    expect(calculation).toBeUndefined();
    expect(ready.names).toEqual(['phi', 'r', 'h']);
    expect(ready.inputs.phi).toMatchObject({ quantity: 'angle', unit: '°' });
    expect(inputs[2]).toMatchObject({ from: 'constant', value: { value: -0.002 } });
  });
});

test('a list may have 99 values and no more', () => {
  const listed = (count: number) => ({
    calc: 'place-mean',
    inputs: { places: Array.from({ length: count }, () => 'base') },
  });
  expect(mistakes(listed(99))).toEqual([]);
  expect(mistakes(listed(100))).toEqual([
    'inputs.places: 100 values are more than the 99 that a calculation takes',
  ]);
});

describe('recipeOf refuses', () => {
  test.each([
    [
      { formula: 'x + y + z', inputs: { x: 'bass', y: '5 mn', z: 'Base' } },
      [
        'inputs.x: unknown spec "bass" → did you mean "base"?',
        'inputs.y: "5 mn" has an unknown unit "mn"',
        'inputs.z: unknown spec "Base" → did you mean "base"?',
      ],
    ],
    [
      { formula: 'x + q', inputs: { x: 'base' } },
      ['formula: "x + q": unknown name "q" → inputs are named under "inputs"'],
    ],
    [
      { formula: 'x*x', inputs: { x: 'base' } },
      [
        'formula: "x*x": it gives m^2, and a length is m → correct the formula, or the quantity of the spec',
      ],
    ],
    [{ ...along, formula: 'a' }, ['formula: stands beside calc → keep one of the two']],
    [
      { ...along, calc: 'cg-allong' },
      ['calc: there is no calculation "cg-allong" → did you mean "cg-along"?'],
    ],
    [{ calc: 'toString' }, ['calc: there is no calculation "toString"']],
    [
      { ...along, quantity: 'area', unit: 'm²' },
      ['calc: cg-along gives a length, and this spec is an area → write "quantity: length"'],
    ],
    [
      { ...along, inputs: { L: 'base', Wf: 'front', wr: 'rear' } },
      ['inputs.wr: cg-along has no input "wr" → did you mean "Wr"?'],
    ],
    [
      { ...along, inputs: { L: 'base', Wf: 'front' } },
      [
        'inputs.Wr: cg-along needs "Wr" (rear axle load) → add Wr: a spec\'s id, or a value like "1 kg"',
      ],
    ],
    [
      { ...along, inputs: { L: 'bass', Wf: 'angle', Wr: '5 mm' } },
      [
        'inputs.L: unknown spec "bass" → did you mean "base"?',
        'inputs.Wf: "angle" is an angle, and Wf is a mass → name a spec that is a mass, like "front"',
        'inputs.Wr: "5 mm" is a length, and Wr is a mass → write it in kg, g, t, lb',
      ],
    ],
    [
      { ...along, inputs: { L: 'base', Wf: 'front', Wr: '5' } },
      ['inputs.Wr: "5" has no unit → write the unit after it, like "5 kg"'],
    ],
    [
      { ...along, inputs: { L: ['base', 'base'], Wf: 'front', Wr: 'rear' } },
      ['inputs.L: 2 values stand where one is wanted'],
    ],
    [
      { calc: 'place-mean', inputs: { places: ['base', 'front', '3'] } },
      [
        'inputs.places.1: "front" is a mass, and places is a length → name a spec that is a length, like "base"',
        'inputs.places.2: "3" has no unit → write the unit after it, like "3 mm"',
      ],
    ],
    [
      { calc: 'place-mean', inputs: { places: 'base' }, carried: ['place'] },
      [
        'carried.0: there is no input "place" → did you mean "places"?',
        'inputs.places: place-mean needs at least 2 of "places" (reading at a place)',
      ],
    ],
    [
      { ...along, inputs: { L: '2 m', Wf: '5 kg', Wr: '5 kg' } },
      ['inputs: none of them is measured, so that the result has no day → name at least one spec'],
    ],
    [
      { calc: 'place-least', inputs: { places: Array(100).fill('base') } },
      ['inputs.places: 100 values are more than the 99 that a calculation takes'],
    ],
    [
      { formula: 'a + b', inputs: { a: 'base', b: 'front' } },
      ['formula: "a + b": its units do not fit: "+" between m and kg'],
    ],
    [
      { formula: 'a', inputs: { a: ['base', '1 mm'] }, carried: ['wheelbase'] },
      [
        'inputs.a: 2 values stand where one is wanted',
        'carried.0: there is no input "wheelbase" → one of: a',
      ],
    ],
  ])('%j', (spec, wrong) => {
    expect(mistakes(spec as Written)).toEqual(wrong);
  });
});
