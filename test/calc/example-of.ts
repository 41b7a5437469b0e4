import type { Calculation, WorkedExample } from '../../src/calc/calculation.ts';
import { makeReady, type ReadyCalculation } from '../../src/calc/work-out.ts';
import { type Quantity, readQuantity } from '../../src/units/quantity.ts';
import { toBaseUnit } from '../../src/units/unit.ts';

/** A number with its unit that a worked example names. */
export function quantityOf(text: string): Quantity {
  const result = readQuantity(text);
  if ('wrong' in result) throw new Error(`${text} ${result.wrong}`);
  return result;
}

/** A calculation made ready for a worked example, with the example's values in base units in the order of its names. */
export function exampleOf(
  calculation: Calculation,
  example: WorkedExample,
): { ready: ReadyCalculation; values: number[] } {
  const { many } = calculation;
  const listed = many ? [example.inputs[many.key] ?? []].flat() : [];
  const ready = makeReady(calculation, listed.length);
  const values = ready.names.map((name) => {
    const position = name in calculation.inputs ? undefined : Number(name.slice(1)) - 1;
    const given = position === undefined ? example.inputs[name] : listed[position];
    const { value, unit } = quantityOf(`${given ?? ready.inputs[name]?.otherwise}`);
    return toBaseUnit(value, unit);
  });
  return { ready, values };
}
