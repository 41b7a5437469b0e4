import { describe, expect, it } from 'vitest';
import type { Calculation, WorkedExample } from '../../src/calc/calculation.ts';
import { library } from '../../src/calc/library.ts';
import { impossibleInput, makeReady } from '../../src/calc/work-out.ts';
import { type Quantity, readQuantity } from '../../src/units/quantity.ts';
import { fromBaseUnit, kindOf, toBaseUnit } from '../../src/units/unit.ts';

function quantity(text: string): Quantity {
  const result = readQuantity(text);
  if ('wrong' in result) throw new Error(`${text} ${result.wrong}`);
  return result;
}

/** Values of a worked example in base units, in the order of the calculation's names, and the result in its own unit. */
function workOut(
  calculation: Calculation,
  example: WorkedExample,
): { got: number; want: number; unit: string } {
  const many = calculation.many ? [example.inputs[calculation.many.key] ?? []].flat() : [];
  const ready = makeReady(calculation, many.length);
  const values = ready.names.map((name) => {
    const listed = /^x(\d+)$/.exec(name);
    const given = listed && calculation.many ? many[Number(listed[1]) - 1] : example.inputs[name];
    const text = (given as string | undefined) ?? ready.inputs[name]?.otherwise;
    if (text === undefined) throw new Error(`${calculation.name}: the example gives no ${name}`);
    const { value, unit } = quantity(text);
    expect(kindOf(unit), `${calculation.name}: quantity of ${name}`).toBe(
      ready.inputs[name]?.quantity,
    );
    return toBaseUnit(value, unit);
  });
  expect(impossibleInput(ready, values)).toBeUndefined();
  const result = quantity(example.result);
  return {
    got: fromBaseUnit(ready.value(values), result.unit),
    want: result.value,
    unit: result.unit,
  };
}

describe.each([...library.values()].map((calculation) => [calculation.name, calculation] as const))(
  '%s',
  (name, calculation) => {
    it('is named by hyphenated words, says its source, and has units that fit', () => {
      expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(calculation.source.length).toBeGreaterThan(8);
      expect(() => makeReady(calculation, calculation.many?.atLeast ?? 0)).not.toThrow();
      expect(kindOf(calculation.result.unit)).toBe(calculation.result.quantity);
      for (const input of Object.values(calculation.inputs))
        expect(kindOf(input.unit)).toBe(input.quantity);
    });

    it.each(calculation.examples.map((example) => [example.source, example] as const))(
      'gives the worked example of %s',
      (_, example) => {
        const { got, want, unit } = workOut(calculation, example);
        expect(kindOf(unit)).toBe(calculation.result.quantity);
        expect(
          Math.abs(got - want),
          `got ${got} ${unit}, want ${want} ± ${example.tolerance}`,
        ).toBeLessThanOrEqual(example.tolerance);
      },
    );

    it('refuses zero for every input that must be above zero, and never gives NaN', () => {
      const count = calculation.many?.atLeast ?? 0;
      const ready = makeReady(calculation, count);
      for (const [index, input] of ready.names.entries()) {
        if (ready.inputs[input]?.above !== 0) continue;
        const values = ready.names.map((_, other) => (other === index ? 0 : 1));
        expect(impossibleInput(ready, values)).toBe(`${ready.inputs[input].what} is not above 0`);
      }
      expect(calculation.examples.length).toBeGreaterThan(0);
    });
  },
);
