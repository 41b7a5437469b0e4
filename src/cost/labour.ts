import type { Figure } from '../book/figure.ts';
import { sumHours, type WorkedRow } from '../hours/hours.ts';
import type { ProjectInfo } from '../model/kinds.ts';
import type { Money } from '../money/money.ts';
import { divideHalfAwayFromZero } from '../money/round.ts';
import type { Minutes } from '../time/duration.ts';
import { say } from '../words/said.ts';
import { stated } from './stated.ts';

/** What own work would be worth at a stated rate. It is no money and is in no total. */
export interface LabourFigure extends Figure<Money, WorkedRow> {
  readonly rate: Money;
  readonly hours: Figure<Minutes, WorkedRow>;
}

/**
 * The builder's own hours at the project's rate, or nothing when it states none. Own is what the first of the project's people
 * worked; what others gave or were paid for is not. Rounded once, half away from zero.
 */
export function labourOf(
  rows: readonly WorkedRow[],
  { rules, people }: Pick<ProjectInfo, 'rules' | 'people'>,
  currency: string,
): LabourFigure | undefined {
  const rate = stated(rules.labourRate, currency);
  if (rate === undefined) return undefined;
  const hours = sumHours(rows.filter(({ who }) => who === people[0]?.id));
  const minor = Number(divideHalfAwayFromZero(BigInt(rate.minor) * BigInt(hours.value), 60n));
  return {
    value: { minor, currency },
    rows: hours.rows,
    how: (words) => words.money.sums.labour(say(hours.how, words)),
    rate,
    hours,
  };
}
