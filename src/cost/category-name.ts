import { costCategories } from '../model/cost-rows.ts';
import type { Said } from '../words/said.ts';

/** What a category of costs is called for a reader; what is none keeps its own name. */
export function categoryName(key: string): Said {
  const category = costCategories.find((known) => known === key);
  return category ? ({ money }) => money.categories[category] : key;
}
