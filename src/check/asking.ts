import { problemAt } from '../read/problem.ts';
import type { Rule } from './rule.ts';
import { standingRows } from './standing-rows.ts';

/** A price is asked from a day on, so that earlier days don't show it. */
export const askingHasADay: Rule = ({ project }) =>
  standingRows(project, 'parts').flatMap(({ raw, value: { asking, forSale } }) => {
    if (asking === undefined || forSale !== undefined) return [];
    return [
      problemAt(
        raw.placeOf(['asking']),
        'part/asking',
        `asking: "${asking.decimal}" has no "for-sale" beside it`,
        'fill in "for-sale" with the day it was first offered',
      ),
    ];
  });
