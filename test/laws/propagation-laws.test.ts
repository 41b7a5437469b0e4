import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { library } from '../../src/calc/library.ts';
import { drawDistribution } from '../../src/measure/monte-carlo.ts';
import { propagate } from '../../src/measure/propagate.ts';
import { spreadOf, standardUncertainty } from '../../src/measure/uncertain.ts';
import { decimalsFor } from '../../src/measure/uncertainty.ts';
import { exampleOf } from '../calc/example-of.ts';
import { ready, source, value } from '../measure/source.ts';

const within = (share: number, found: number, want: number) =>
  expect(Math.abs(found - want)).toBeLessThanOrEqual(share * Math.max(Math.abs(want), 1e-12));

const size = fc.double({ min: 0.01, max: 100, noNaN: true });
const sources = fc.array(fc.record({ u: size, nu: fc.integer({ min: 1, max: 30 }) }), {
  minLength: 1,
  maxLength: 5,
});
const made = (list: readonly { u: number; nu: number }[], by = 1) =>
  list.map(({ u, nu }, index) => source(`s${index}`, u * by, { nu }));

describe('propagation', () => {
  test('scales U with the sources, and leaves the degrees of freedom', () => {
    fc.assert(
      fc.property(sources, size, (list, by) => {
        const [plain, scaled] = [spreadOf(made(list)), spreadOf(made(list, -by))];
        within(1e-9, scaled.nu, plain.nu);
        within(1e-9, scaled.u ?? 0, by * (plain.u ?? 0));
        // The factor k goes by whole degrees of freedom, which a last bit can tip over.
        fc.pre(Math.abs((plain.nu * 10) % 1) > 1e-6 || plain.nu === scaled.nu);
        within(1e-9, scaled.U ?? 0, by * (plain.U ?? 0));
      }),
    );
  });

  test('does not ask in which order inputs and sources come', () => {
    fc.assert(
      fc.property(sources, size, size, (list, a, b) => {
        const inputs = [value(a, ...made(list)), value(b, source('s0', 1, { nu: 3 }))];
        const one = propagate(ready('a/(a + b)', ['a', 'b']), inputs);
        const other = propagate(
          ready('a/(b + a)', ['b', 'a']),
          inputs
            .map(({ value: at, components }) => value(at, ...components.toReversed()))
            .reverse(),
        );
        within(1e-12, other.value, one.value);
        within(1e-9, standardUncertainty(other.components), standardUncertainty(one.components));
      }),
    );
  });

  test('of a formula of formulas is that of the whole formula put in at once', () => {
    fc.assert(
      fc.property(sources, size, size, size, (list, a, b, c) => {
        const shared = source('zero', 0.3);
        const inputs = [
          value(a, ...made(list), shared),
          value(b, source('b', 0.2), shared),
          value(c, source('c', 0.1)),
        ] as const;
        const inner = propagate(ready('sqrt(a*b)', ['a', 'b']), inputs.slice(0, 2));
        const outer = propagate(ready('i/c + i^2 - a', ['i', 'c', 'a']), [
          inner,
          inputs[2],
          inputs[0],
        ]);
        const whole = propagate(ready('sqrt(a*b)/c + sqrt(a*b)^2 - a', ['a', 'b', 'c']), inputs);
        within(1e-9, outer.value, whole.value);
        within(1e-6, spreadOf(outer.components).u ?? 0, spreadOf(whole.components).u ?? 0);
      }),
    );
  });

  test('agrees with a million draws for sums of normal sources, within the JCGM tolerance', () => {
    const weights = fc.array(fc.double({ min: -9, max: 9, noNaN: true }), {
      minLength: 2,
      maxLength: 4,
    });
    fc.assert(
      fc.property(weights, size, fc.nat(), (list, u, seed) => {
        fc.pre(Math.hypot(...list) > 0.1);
        const inputs = list.map((_, index) => value(index, source(`s${index % 3}`, u)));
        const names = list.map((_, index) => `x${index + 1}`);
        const text = names.map((name, index) => `(${list[index]?.toFixed(6)})*${name}`).join(' + ');
        const made = ready(text, names);
        const gum = propagate(made, inputs);
        const { u: whole = 0, U = 0 } = spreadOf(gum.components);
        fc.pre(whole > 1e-6);
        const drawn = drawDistribution(inputs, made.value, { seed, draws: 1_000_000 });
        const tolerance = 0.5 * 10 ** -decimalsFor(whole);
        // What chance adds to an end is not what the tolerance is for: four standard errors are allowed.
        expect(Math.abs(gum.value - U - drawn.low)).toBeLessThan(tolerance + 4 * drawn.lowError);
        expect(Math.abs(gum.value + U - drawn.high)).toBeLessThan(tolerance + 4 * drawn.highError);
      }),
      { numRuns: 8 },
    );
  });
});

const examples = [...library.values()].flatMap((calculation) =>
  calculation.examples.slice(0, 1).map((example) => ({
    name: calculation.name,
    ...exampleOf(calculation, example),
  })),
);

test.each(examples.filter(({ ready }) => !/\b(min|max)\(/.test(ready.text)))(
  'the sensitivities of $name at its worked example are the slopes of the formula there',
  ({ ready, values }) => {
    const { budget } = propagate(
      ready,
      values.map((at) => value(at)),
    );
    // A slope is compared as what it does to the result, beside the largest of them.
    const sizes = values.map((at) => Math.abs(at) || 1);
    const effects = budget.map(({ sensitivity }, index) => sensitivity * (sizes[index] as number));
    const largest = Math.max(...effects.map(Math.abs));
    for (const [index, { name }] of budget.entries()) {
      const step = 1e-5 * (sizes[index] as number);
      const at = (shift: number) =>
        ready.value(values.map((x, other) => (other === index ? x + shift : x)));
      const slope = (8 * (at(step) - at(-step)) - (at(2 * step) - at(-2 * step))) / (12 * step);
      const found = (effects[index] as number) - slope * (sizes[index] as number);
      expect(Math.abs(found), name).toBeLessThanOrEqual(1e-6 * largest);
    }
  },
);
