import { compile } from '../../src/formula/compile.ts';
import { differentiate, type Formula, isFormula, parseFormula } from '../../src/formula/parse.ts';
import { type Tree, treeOf } from '../../src/formula/tree.ts';

/** Values of names, in the order a formula is compiled with. */
export type Values = Readonly<Record<string, number>>;

/** A formula that must be one. */
export function formulaOf(text: string, names: readonly string[]): Formula {
  const result = parseFormula(text, names);
  if (!isFormula(result)) throw new Error(`"${text}": ${result.wrong}`);
  return result;
}

/** The tree of a formula that must be one. */
export function treeFrom(text: string, names: readonly string[]): Tree {
  return treeOf(formulaOf(text, names));
}

/** What a formula gives for values. */
export function worth(text: string, values: Values = {}): number {
  const names = Object.keys(values);
  return compile(treeFrom(text, names), names)(Object.values(values));
}

/** The derivative of a formula to one of its names, at values. */
export function slope(text: string, name: string, values: Values): number {
  const names = Object.keys(values);
  const derivative = differentiate(formulaOf(text, names), name);
  return compile(treeOf(derivative), names)(Object.values(values));
}
