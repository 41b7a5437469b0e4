import type { Project } from '../book/types.ts';
import { standsOn } from '../ledger/standing.ts';
import { convert, type Money, toMinor, type WrittenAmount } from '../money/money.ts';
import type { Day } from '../time/day.ts';
import type { StandingRate } from './cost-row.ts';

/** An amount in the project's currency, and the recorded rate that brought it there when it was written in another. */
export interface OwnAmount {
  readonly money: Money;
  readonly rate: StandingRate | undefined;
}

/** Which rates may be used: those dated on or before `at`, as they were known on `day`. */
export interface RateDays {
  readonly at: Day;
  readonly day: Day;
}

/** Money in the project's currency; undefined without a recorded rate by then, which the check says where it matters. */
export function inOwnCurrency(
  { currency, rates }: Pick<Project, 'currency' | 'rates'>,
  money: Money,
  { at, day }: RateDays,
): OwnAmount | undefined {
  if (money.currency === currency) return { money, rate: undefined };
  const rate = rates.findLast(
    (candidate) =>
      candidate.from === money.currency &&
      candidate.to === currency &&
      candidate.date <= at &&
      standsOn(candidate, day),
  );
  return rate && { money: convert(money, rate.rate, currency), rate };
}

/** A written amount as money; without a code it is in the project's currency. */
export function moneyOf(
  { decimal, currency }: WrittenAmount,
  { currency: own }: Pick<Project, 'currency'>,
): Money | undefined {
  return toMinor(decimal, currency ?? own);
}
