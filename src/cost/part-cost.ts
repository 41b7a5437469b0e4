import type { View } from '../book/types.ts';
import { type PartCost, partCosts } from './part-costs.ts';

const kept = new WeakMap<View, ReadonlyMap<string, PartCost>>();

/** What one part had cost on the day of a view; all parts of a view are worked out once. */
export function partCostOf(view: View, id: string): PartCost | undefined {
  const costs = kept.get(view) ?? new Map(partCosts(view).parts.map((cost) => [cost.id, cost]));
  kept.set(view, costs);
  return costs.get(id);
}
