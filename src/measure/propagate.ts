import type { ReadyCalculation } from '../calc/work-out.ts';
import { type Compiled, compile } from '../formula/compile.ts';
import { differentiate } from '../formula/parse.ts';
import { treeOf } from '../formula/tree.ts';
import {
  mergeComponents,
  scaleComponents,
  standardUncertainty,
  type Uncertain,
} from './uncertain.ts';

/** One line of an uncertainty budget. */
export interface BudgetLine {
  readonly name: string;
  readonly value: number;
  readonly u: number;
  /** ∂y/∂x, in base units of the two quantities. */
  readonly sensitivity: number;
  /** |sensitivity| × u, in the result's base unit. */
  readonly part: number;
  /** Share of u², 0 to 1, before correlation; the shares add to 1 with `sharedShare`. */
  readonly share: number;
}

/** A value worked out of others, with the budget of its uncertainty. */
export interface Propagated extends Uncertain {
  readonly budget: readonly BudgetLine[];
  /** What correlation adds to (or takes from) the sum of the shares. */
  readonly sharedShare: number;
}

/** Law of propagation of uncertainty (GUM 5.1.2, 5.2.2): sensitivities by symbolic derivative, sources carried on by their keys. */
export function propagate(ready: ReadyCalculation, inputs: readonly Uncertain[]): Propagated {
  const values = inputs.map(({ value }) => value);
  const uncertainties = inputs.map(({ components }) => standardUncertainty(components));
  const sensitivities = uncertainties.map((u, index) => sensitivityTo(ready, index, values, u));
  const components = mergeComponents(
    inputs.flatMap((input, index) =>
      scaleComponents(input.components, sensitivities[index] as number),
    ),
  );
  const u = standardUncertainty(components);
  const parts = uncertainties.map((u, index) => Math.abs(sensitivities[index] as number) * u);
  const budget = inputs.map((input, index) => {
    const part = parts[index] as number;
    return {
      name: ready.names[index] as string,
      value: input.value,
      u: uncertainties[index] as number,
      sensitivity: sensitivities[index] as number,
      part,
      share: u === 0 ? 0 : (part / u) ** 2,
    };
  });
  const sharedShare = u === 0 ? 0 : 1 - budget.reduce((sum, { share }) => sum + share, 0);
  return { value: ready.value(values), components, budget, sharedShare };
}

const derivatives = new WeakMap<ReadyCalculation, (Compiled | undefined)[]>();

/** ∂y/∂x at the values; where the formula has no derivative everywhere (least, largest, comparison), the slope over ± u, as GUM 5.1.3 note 2 allows. */
function sensitivityTo(
  ready: ReadyCalculation,
  index: number,
  values: readonly number[],
  u: number,
): number {
  const known = derivatives.get(ready) ?? [];
  derivatives.set(ready, known);
  if (!(index in known)) known[index] = derivativeOf(ready, index);
  const symbolic = known[index]?.(values);
  if (symbolic !== undefined && Number.isFinite(symbolic)) return symbolic;

  const step = u > 0 ? u : Math.max(Math.abs(values[index] as number) * 1e-6, 1e-12);
  const at = (shift: number) =>
    ready.value(values.map((value, other) => (other === index ? value + shift : value)));
  return (at(step) - at(-step)) / (2 * step);
}

function derivativeOf(ready: ReadyCalculation, index: number): Compiled | undefined {
  // The library folds constants through functions it was not given and breaks on these two; they have no derivative anyway,
  // and a comparison has none it knows.
  if (/\b(min|max)\s*\(|[<>]/.test(ready.text)) return undefined;
  return compile(treeOf(differentiate(ready.formula, ready.names[index] as string)), ready.names);
}
