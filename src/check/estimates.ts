import type { Part } from '../model/kinds.ts';
import type { WrittenAmount } from '../money/money.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import type { Rule } from './rule.ts';
import { standingRows } from './standing-rows.ts';

/** An estimate lies between its lowest and its highest, and neither stands without it. */
export const estimatesAreInOrder: Rule = ({ project }) =>
  standingRows(project, 'parts').flatMap(({ raw, value }) => [
    ...end(raw, value, 'estimate-low', value.estimateLow),
    ...end(raw, value, 'estimate-high', value.estimateHigh),
  ]);

function end(
  raw: RawRecord,
  { estimate }: Part,
  field: 'estimate-low' | 'estimate-high',
  amount: WrittenAmount | undefined,
): Problem[] {
  if (amount === undefined) return [];
  const wrong = (code: string, message: string, fix: string) => [
    problemAt(
      raw.placeOf([field]),
      `part/${code}`,
      `${field}: "${amount.decimal}" ${message}`,
      fix,
    ),
  ];
  if (estimate === undefined)
    return wrong('no-estimate', 'has no estimate beside it', 'fill in "estimate"');
  const beyond = Number(amount.decimal) - Number(estimate.decimal);
  if (field === 'estimate-low' && beyond > 0)
    return wrong(
      'estimates',
      `is more than the estimate (${estimate.decimal})`,
      `write at most ${estimate.decimal}`,
    );
  if (field === 'estimate-high' && beyond < 0)
    return wrong(
      'estimates',
      `is less than the estimate (${estimate.decimal})`,
      `write at least ${estimate.decimal}`,
    );
  return [];
}
