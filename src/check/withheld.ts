import { withholds } from '../ledger/withheld.ts';
import { problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';
import { standingRows } from './standing-rows.ts';

/** A withheld amount is not alone in its category, whose total would tell it. */
export const withheldAmountsHide: Rule = ({ project }) => {
  const rows = standingRows(project, 'costs').filter(({ value }) => withholds(value, 'amount'));
  return [...Map.groupBy(rows, ({ value }) => value.category).values()]
    .filter(({ length }) => length === 1)
    .flat()
    .map(({ raw, value: { id, category } }) => ({
      ...problemAt(
        raw.placeOf(['withhold']),
        'cost/withheld-alone',
        `withhold: "${id}" is the only withheld amount of category "${category}", whose total tells it`,
        'withhold another amount of that category too, or give it the category of another',
      ),
      level: 'warning' as const,
    }));
};
