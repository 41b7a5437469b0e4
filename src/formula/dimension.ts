import {
  type Dimension,
  dimensionless,
  sameDimension,
  showDimension,
} from '../units/dimensions.ts';
import type { Tree } from './tree.ts';

/** What is wrong with a formula's units. */
export interface WrongUnits {
  readonly wrong: string;
}

/** Tells the two results of `dimensionOfTree` apart. */
export function isDimension(result: Dimension | WrongUnits): result is Dimension {
  return !('wrong' in result);
}

const ACCELERATION: Dimension = [1, 0, -2, 0, 0, 0];
const OF_NUMBERS = new Set(['sin', 'cos', 'tan', 'asin', 'acos', 'atan', 'exp', 'log']);

/**
 * The dimension of a formula's result, or what does not fit: unlike things added, a length under a sine, a power that is no number.
 * Comparisons give a plain number.
 */
export function dimensionOfTree(
  tree: Tree,
  dimensions: Readonly<Record<string, Dimension>>,
): Dimension | WrongUnits {
  if (tree.type === 'number') return dimensionless;
  if (tree.type === 'name')
    return tree.name === 'g_n' ? ACCELERATION : (dimensions[tree.name] ?? dimensionless);

  const args: Dimension[] = [];
  for (const arg of tree.args) {
    const dimension = dimensionOfTree(arg, dimensions);
    if (!isDimension(dimension)) return dimension;
    args.push(dimension);
  }
  const [first = dimensionless, second = dimensionless] = args;
  if (tree.name === 'neg' || tree.name === 'abs') return first;
  if (tree.name === '*') return combined(first, second, 1);
  if (tree.name === '/') return combined(first, second, -1);
  if (tree.name === 'sqrt') return first.map((exponent) => exponent / 2) as unknown as Dimension;
  if (tree.name === '^') return power(first, second, tree.args[1]);
  if (OF_NUMBERS.has(tree.name))
    return sameDimension(first, dimensionless)
      ? dimensionless
      : { wrong: `${tree.name} of ${showDimension(first)}` };

  const odd = args.find((dimension) => !sameDimension(dimension, first));
  if (odd)
    return { wrong: `"${tree.name}" between ${showDimension(first)} and ${showDimension(odd)}` };
  return '<>=='.includes(tree.name[0] ?? '') ? dimensionless : first;
}

function combined(a: Dimension, b: Dimension, sign: 1 | -1): Dimension {
  return a.map((exponent, index) => exponent + sign * (b[index] ?? 0)) as unknown as Dimension;
}

function power(
  base: Dimension,
  raised: Dimension,
  exponent: Tree | undefined,
): Dimension | WrongUnits {
  if (!sameDimension(raised, dimensionless))
    return { wrong: `a power with an exponent of ${showDimension(raised)}` };
  const value =
    exponent?.type === 'call' && exponent.name === 'neg' && exponent.args[0]?.type === 'number'
      ? -exponent.args[0].value
      : exponent?.type === 'number'
        ? exponent.value
        : undefined;
  if (sameDimension(base, dimensionless)) return dimensionless;
  if (value === undefined)
    return { wrong: `a power of ${showDimension(base)} that is no plain number` };
  return base.map((part) => part * value) as unknown as Dimension;
}
