import type { Formula } from './parse.ts';

/** A formula as the walkers here see it: numbers, names, calls and operators, without parentheses. */
export type Tree =
  | { readonly type: 'number'; readonly value: number }
  | { readonly type: 'name'; readonly name: string }
  | { readonly type: 'call'; readonly name: string; readonly args: readonly Tree[] };

interface MathNode {
  readonly type: string;
  readonly value?: number;
  readonly name?: string;
  readonly op?: string;
  readonly fn?: { readonly name: string };
  readonly args?: readonly MathNode[];
  readonly content?: MathNode;
}

/** The tree of a parsed formula; operators are calls named by their sign, a leading minus is `neg`. */
export function treeOf(formula: Formula): Tree {
  return convert(formula as unknown as MathNode);
}

function convert(node: MathNode): Tree {
  const args = (node.args ?? []).map(convert);
  switch (node.type) {
    case 'ConstantNode':
      return { type: 'number', value: node.value ?? Number.NaN };
    case 'SymbolNode':
      return { type: 'name', name: node.name ?? '' };
    case 'ParenthesisNode':
      return convert(node.content as MathNode);
    case 'OperatorNode':
      if (args.length === 1)
        return node.op === '-' ? { type: 'call', name: 'neg', args } : (args[0] as Tree);
      return { type: 'call', name: node.op ?? '', args };
    case 'FunctionNode':
      return { type: 'call', name: node.fn?.name ?? '', args };
    default:
      throw new Error(`this is our bug: a formula holds a ${node.type}`);
  }
}
