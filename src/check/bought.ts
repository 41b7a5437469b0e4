import { correctionsOf, firstIds } from '../ledger/corrections.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';
import { standingRows } from './standing-rows.ts';

/** What a search says was bought has been ordered or got; without a day for it, the hunt would go on for ever. */
export const boughtPartsAreHad: Rule = ({ project }) => {
  const firstId = firstIds(correctionsOf(project.lists));
  const parts = new Map(
    standingRows(project, 'parts').map(({ value }) => [firstId(value.id), value]),
  );
  return standingRows(project, 'searches').flatMap(({ raw, value }): Problem[] => {
    const part = parts.get(firstId(value.part));
    if (value.result !== 'bought' || part === undefined) return [];
    if ([part.ordered, part.got, part.fitted].some((step) => step !== undefined)) return [];
    const problem = problemAt(
      raw.placeOf(['result']),
      'search/bought-not-had',
      `result: "bought", and the part "${value.part}" was neither ordered nor got`,
      `write ordered: ${value.date} or the day it was got to "${value.part}" in ledger/parts`,
    );
    return [{ ...problem, level: 'warning' }];
  });
};
