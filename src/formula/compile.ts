import { formulaConstants } from './parse.ts';
import type { Tree } from './tree.ts';

/** A formula as a fast function of its inputs, in the order of the names it was compiled with. Comparisons give 1 or 0. */
export type Compiled = (values: ArrayLike<number>) => number;

const INFIX: Readonly<Record<string, string>> = {
  '+': '+',
  '-': '-',
  '*': '*',
  '/': '/',
  '^': '**',
  '<': '<',
  '>': '>',
  '<=': '<=',
  '>=': '>=',
};

const FUNCTIONS: Readonly<Record<string, string>> = {
  sqrt: 'Math.sqrt',
  abs: 'Math.abs',
  sign: 'Math.sign',
  sin: 'Math.sin',
  cos: 'Math.cos',
  tan: 'Math.tan',
  asin: 'Math.asin',
  acos: 'Math.acos',
  atan: 'Math.atan',
  exp: 'Math.exp',
  log: 'Math.log',
  min: 'Math.min',
  max: 'Math.max',
};

/**
 * Compiles a tree that has passed `parseFormula` (or is a derivative of one) to a function, so that a million draws take a fraction of a second.
 * The source is put together from this file's own words and the positions of names, never from a name's text.
 */
export function compile(tree: Tree, names: readonly string[]): Compiled {
  const refs = new Map(names.map((name, index) => [name, `v[${index}]`]));
  return compileSteps([{ tree, refs }]);
}

/** One formula of several: what its names stand for, as program text made here (`v[0]`, `r0`). */
export interface Step {
  readonly tree: Tree;
  readonly refs: ReadonlyMap<string, string>;
}

/** Compiles formulas that follow one another; the result of the k-th is `r` and k for those after it, the last one's is given. */
export function compileSteps(steps: readonly Step[]): Compiled {
  const lines = steps.map(({ tree, refs }, index) => `const r${index} = +(${source(tree, refs)});`);
  return new Function('v', `${lines.join(' ')} return r${steps.length - 1};`) as Compiled;
}

function source(tree: Tree, refs: ReadonlyMap<string, string>): string {
  if (tree.type === 'number') return `(${Number(tree.value)})`;
  if (tree.type === 'name') {
    const ref = refs.get(tree.name);
    if (ref !== undefined) return ref;
    const constant = formulaConstants[tree.name];
    if (constant === undefined) throw new Error(`this is our bug: no value for "${tree.name}"`);
    return `(${constant})`;
  }
  const args = tree.args.map((arg) => source(arg, refs));
  if (tree.name === 'neg') return `(-${args[0]})`;
  if (tree.name === 'sec') return `(1/Math.cos(${args[0]}))`;
  const infix = INFIX[tree.name];
  // A negative base to a power would be a syntax error without parentheses of its own.
  if (infix !== undefined) return `((${args[0]})${infix}(${args[1]}))`;
  const name = FUNCTIONS[tree.name];
  if (name === undefined) throw new Error(`this is our bug: no function "${tree.name}"`);
  return `${name}(${args.join(',')})`;
}
