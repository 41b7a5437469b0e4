import { type Compiled, compile } from '../formula/compile.ts';
import { dimensionOfTree, isDimension } from '../formula/dimension.ts';
import { type Formula, isFormula, parseFormula } from '../formula/parse.ts';
import { type Tree, treeOf } from '../formula/tree.ts';
import { dimensionOf, sameDimension, showDimension } from '../units/dimensions.ts';
import type { QuantityKind } from '../units/kinds.ts';
import type { Calculation, CalculationInput, Requirement } from './calculation.ts';

/** A calculation made ready for a number of values: parsed, its units checked, compiled. */
export interface ReadyCalculation {
  readonly text: string;
  /** Names in the order the compiled function takes them. */
  readonly names: readonly string[];
  readonly inputs: Readonly<Record<string, CalculationInput>>;
  readonly formula: Formula;
  readonly tree: Tree;
  readonly value: Compiled;
  readonly requires: readonly { readonly requirement: Requirement; readonly holds: Compiled }[];
}

/** Makes a calculation of the library ready. @throws when its formula or units are wrong, which a test of the library finds first. */
export function makeReady(calculation: Calculation, n = 0): ReadyCalculation {
  const { many } = calculation;
  const listed = many
    ? Array.from({ length: n }, (_, index) => [`x${index + 1}`, many] as const)
    : [];
  const inputs: Record<string, CalculationInput> = {
    ...calculation.inputs,
    ...Object.fromEntries(listed),
  };
  const text =
    typeof calculation.formula === 'string' ? calculation.formula : calculation.formula(n);
  const ready = readyFormula(text, inputs, calculation.result.quantity);
  if ('wrong' in ready) throw new Error(`this is our bug: ${calculation.name}: ${ready.wrong}`);
  const requires = (calculation.requires ?? []).map((requirement) => {
    const formula = parseFormula(requirement.holds, ready.names);
    if (!isFormula(formula))
      throw new Error(`this is our bug: ${calculation.name}: ${formula.wrong}`);
    return { requirement, holds: compile(treeOf(formula), ready.names) };
  });
  return { ...ready, requires };
}

/** Parses a formula over named inputs and checks its units against the quantity it should give. */
export function readyFormula(
  text: string,
  inputs: Readonly<Record<string, CalculationInput>>,
  quantity: QuantityKind,
): ReadyCalculation | { readonly wrong: string } {
  const names = Object.keys(inputs);
  const formula = parseFormula(text, names);
  if (!isFormula(formula)) return formula;
  const tree = treeOf(formula);
  const dimensions = Object.fromEntries(
    Object.entries(inputs).map(([name, input]) => [name, dimensionOf[input.quantity]]),
  );
  const dimension = dimensionOfTree(tree, dimensions);
  if (!isDimension(dimension)) return { wrong: `its units do not fit: ${dimension.wrong}` };
  if (!sameDimension(dimension, dimensionOf[quantity]))
    return {
      wrong: `it gives ${showDimension(dimension)}, and a ${quantity} is ${showDimension(dimensionOf[quantity])}`,
    };
  return { text, names, inputs, formula, tree, value: compile(tree, names), requires: [] };
}

/** Why a calculation can't be worked out with these values (in base units, in the order of its names), or nothing. */
export function impossibleInput(
  ready: ReadyCalculation,
  values: readonly number[],
): string | undefined {
  for (const [index, name] of ready.names.entries()) {
    const input = ready.inputs[name];
    const value = values[index] ?? Number.NaN;
    if (input?.above !== undefined && !(value > input.above))
      return `${input.what} is not above ${input.above}`;
    if (input?.least !== undefined && !(value >= input.least))
      return `${input.what} is below ${input.least}`;
  }
  const broken = ready.requires.find(({ holds }) => holds(values) !== 1);
  if (broken) return broken.requirement.otherwise;
  return Number.isFinite(ready.value(values))
    ? undefined
    : 'it has no finite result for these values';
}
