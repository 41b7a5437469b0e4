import { type ReadyCalculation, readyFormula } from '../../src/calc/work-out.ts';
import type { Component, Uncertain } from '../../src/measure/uncertain.ts';
import type { QuantityKind } from '../../src/units/kinds.ts';

/** A source of uncertainty; normal and of its own where nothing else is said. */
export function source(key: string, u: number, more: Partial<Component> = {}): Component {
  const plain = { nu: Number.POSITIVE_INFINITY, shape: 'normal' as const, how: '' };
  return { key, group: key, name: key, u, ...plain, ...more };
}

/** A value with its sources. */
export function value(of: number, ...components: readonly Component[]): Uncertain {
  return { value: of, components };
}

/** A formula over plain numbers, or over the quantities named, made ready. */
export function ready(
  text: string,
  names: readonly string[],
  quantity: QuantityKind = 'ratio',
): ReadyCalculation {
  const inputs = names.map((name) => [name, { what: name, quantity, unit: '1' }] as const);
  const made = readyFormula(text, Object.fromEntries(inputs), quantity);
  if ('wrong' in made) throw new Error(`"${text}": ${made.wrong}`);
  return made;
}
