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
  return new Function('v', `return +(${source(tree, names)});`) as Compiled;
}

function source(tree: Tree, names: readonly string[]): string {
  if (tree.type === 'number') return `(${Number(tree.value)})`;
  if (tree.type === 'name') {
    const index = names.indexOf(tree.name);
    if (index >= 0) return `v[${index}]`;
    const constant = formulaConstants[tree.name];
    if (constant === undefined) throw new Error(`this is our bug: no value for "${tree.name}"`);
    return `(${constant})`;
  }
  const args = tree.args.map((arg) => source(arg, names));
  if (tree.name === 'neg') return `(-${args[0]})`;
  if (tree.name === 'sec') return `(1/Math.cos(${args[0]}))`;
  const infix = INFIX[tree.name];
  // A negative base to a power would be a syntax error without parentheses of its own.
  if (infix !== undefined) return `((${args[0]})${infix}(${args[1]}))`;
  const name = FUNCTIONS[tree.name];
  if (name === undefined) throw new Error(`this is our bug: no function "${tree.name}"`);
  return `${name}(${args.join(',')})`;
}
