import type { Recipe } from './recipe.ts';
import { inputSpecsOf } from './worked.ts';

/** Specs that are worked out of a spec directly, in the order of the recipes. */
export function dependentsOf(
  spec: string,
  recipes: ReadonlyMap<string, Recipe>,
): readonly string[] {
  return [...recipes].filter(([, recipe]) => inputSpecsOf(recipe).includes(spec)).map(([id]) => id);
}
