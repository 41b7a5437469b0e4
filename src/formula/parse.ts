import { create, derivativeDependencies, type MathNode, parseDependencies } from 'mathjs/number';

/** A parsed formula. */
export type Formula = MathNode;

// The package's types call its own factories possibly undefined; they are not.
const math = create(
  { parseDependencies, derivativeDependencies } as Parameters<typeof create>[0],
  {},
);

/** Functions a formula may use, with how many arguments each takes. */
export const formulaFunctions: Readonly<Record<string, readonly [least: number, most: number]>> = {
  sqrt: [1, 1],
  abs: [1, 1],
  sin: [1, 1],
  cos: [1, 1],
  tan: [1, 1],
  asin: [1, 1],
  acos: [1, 1],
  atan: [1, 1],
  exp: [1, 1],
  log: [1, 1],
  min: [1, 99],
  max: [1, 99],
};

/** Names that mean a number in every formula: π, and the standard acceleration of gravity 9.80665 m/s² (3rd CGPM, 1901). */
export const formulaConstants: Readonly<Record<string, number>> = { pi: Math.PI, g_n: 9.80665 };

/** Why a text is no formula. */
export interface NoFormula {
  readonly wrong: string;
}

/** Operations inside one another that a formula may have, so that no walk over it runs out of stack. */
const DEEPEST = 150;
const TOO_DEEP = 'it is nested too deep';

/**
 * Parses arithmetic over named inputs: `+ - * / ^`, parentheses, comparisons, and the functions above. Nothing else is a formula here,
 * so that one from a content file cannot do more than calculate.
 */
export function parseFormula(text: string, names: readonly string[]): Formula | NoFormula {
  // The parser would take a percent sign for a share of what stands before it, and a # for a comment.
  const stray = /[^\p{L}\p{N}_\s.,+\-*/^()<>=]/u.exec(text);
  if (stray) return { wrong: `"${stray[0]}" is not arithmetic` };
  let formula: Formula;
  try {
    formula = math.parse(text);
  } catch (error) {
    if (error instanceof RangeError) return { wrong: TOO_DEEP };
    return { wrong: (error as Error).message.replace(/^SyntaxError: /, '') };
  }
  const wrong = firstWrong(formula, new Set(names), 0);
  return wrong === undefined ? formula : { wrong };
}

/** Tells the two results of `parseFormula` apart. */
export function isFormula(result: Formula | NoFormula): result is Formula {
  return !('wrong' in result);
}

/** The derivative of a formula with respect to one of its names. @throws for `min` and `max`, which have none everywhere. */
export function differentiate(formula: Formula, name: string): Formula {
  return math.derivative(formula, name, { simplify: false });
}

interface LooseNode {
  readonly type: string;
  readonly name?: string;
  readonly op?: string;
  readonly implicit?: boolean;
  readonly value?: unknown;
  readonly fn?: { readonly name?: string } | string;
  readonly args?: readonly LooseNode[];
  readonly content?: LooseNode;
}

const OPERATORS = new Set(['+', '-', '*', '/', '^', '<', '>', '<=', '>=']);

function firstWrong(
  formula: Formula,
  names: ReadonlySet<string>,
  depth: number,
): string | undefined {
  if (depth > DEEPEST) return TOO_DEEP;
  const node = formula as unknown as LooseNode;
  const inner = [...(node.args ?? []), ...(node.content ? [node.content] : [])];
  switch (node.type) {
    case 'ConstantNode':
      if (node.value === undefined) return 'it is empty';
      if (!Number.isFinite(node.value)) return `"${String(node.value)}" is not a number`;
      break;
    case 'SymbolNode':
      if (!names.has(node.name ?? '') && !Object.hasOwn(formulaConstants, node.name ?? ''))
        return `unknown name "${node.name}"`;
      break;
    case 'OperatorNode':
      if (!OPERATORS.has(node.op ?? '')) return `"${node.op}" is not arithmetic`;
      break;
    case 'FunctionNode': {
      const name = typeof node.fn === 'object' ? (node.fn.name ?? '') : '';
      const count = Object.hasOwn(formulaFunctions, name) ? formulaFunctions[name] : undefined;
      if (count === undefined) return `unknown function "${name}"`;
      if (inner.length < count[0] || inner.length > count[1])
        return `"${name}" does not take ${inner.length} values`;
      break;
    }
    case 'ParenthesisNode':
      break;
    default:
      return 'it is more than arithmetic';
  }
  for (const child of inner) {
    const wrong = firstWrong(child as unknown as Formula, names, depth + 1);
    if (wrong !== undefined) return wrong;
  }
  return node.implicit ? `a "*" is missing in "${String(formula)}"` : undefined;
}
