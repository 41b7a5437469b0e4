import type { Project } from '../book/types.ts';
import { inOwnCurrency, moneyOf } from '../cost/own-currency.ts';
import type { DonorPart } from '../cost/would-be-share.ts';
import type { Standing } from '../ledger/standing.ts';
import { withholds } from '../ledger/withheld.ts';
import type { Candidate } from '../model/kinds.ts';
import { type Money, showMoney, toMinor, type WrittenAmount } from '../money/money.ts';
import { divideHalfAwayFromZero } from '../money/round.ts';
import type { Day } from '../time/day.ts';
import { type Minutes, showDuration } from '../time/duration.ts';
import { type Words, wordsOf } from '../words/words.ts';

/** The share of a donor machine that a part bears or would bear; undefined where it bears none or it can't be worked out. */
export type ShareOf = (candidate: DonorPart) => Money | undefined;

/** Money that a candidate takes, and where it comes from. Without money the reason stands in `how`. */
export interface CandidateCost {
  readonly from: 'price' | 'share' | 'value' | 'nothing';
  readonly money: Money | undefined;
  readonly how: string;
}

/** What a candidate costs: its price, else a donor's share, else the value stated for it. */
export function costOf(
  project: Project,
  candidate: Candidate & Standing,
  { day, shareOf, language }: { day: Day; shareOf?: ShareOf | undefined; language: string },
): CandidateCost {
  const words = wordsOf(language).parts.choices.cost;
  const inOwn = (amount: WrittenAmount) => converted(project, candidate, amount, day);
  if (withholds(candidate, 'price'))
    return { from: 'nothing', money: undefined, how: words.withheld };
  if (candidate.price)
    return { from: 'price', ...worded(inOwn(candidate.price), words.price, language) };

  const value = candidate.value && inOwn(candidate.value).money;
  const { part, source } = candidate;
  const share = shareOf?.({ part, source, value });
  if (share) return { from: 'share', money: share, how: words.share };
  if (candidate.value)
    return { from: 'value', ...worded(inOwn(candidate.value), words.value, language) };
  return { from: 'nothing', money: undefined, how: words.unknown };
}

interface Converted {
  readonly money: Money | undefined;
  readonly paid: Money | undefined;
  readonly rate: string | undefined;
}

function converted(
  project: Project,
  { date }: Candidate,
  amount: WrittenAmount,
  day: Day,
): Converted {
  const paid = moneyOf(amount, project);
  const own = paid && inOwnCurrency(project, paid, { at: date, day });
  return { paid, money: own?.money, rate: own?.rate?.rate };
}

type AmountWords = Words['parts']['choices']['cost']['price' | 'value'];

function worded({ money, paid, rate }: Converted, words: AmountWords, language: string) {
  if (paid === undefined) return { money, how: words.unreadable };
  const shown = showMoney(paid, language);
  if (money === undefined) return { money, how: words.withoutRate(shown) };
  return { money, how: rate === undefined ? words.plain : words.converted(shown, rate) };
}

/** Own hours in money, which is shown apart from money spent. */
export interface Labour {
  readonly money: Money;
  readonly how: string;
}

/** Hours at the project's stated rate, rounded half away from zero; undefined where no rate is stated. */
export function labourOf(project: Project, minutes: Minutes, language: string): Labour | undefined {
  const stated = project.info.rules.labourRate;
  const currency = stated?.currency ?? project.currency;
  const rate = stated && toMinor(stated.decimal, currency);
  if (rate === undefined || currency !== project.currency) return undefined;
  const minor = Number(divideHalfAwayFromZero(BigInt(minutes) * BigInt(rate.minor), 60n));
  const { labour } = wordsOf(language).parts.choices.cost;
  const how = labour(showDuration(minutes), showMoney(rate, language));
  return { money: { minor, currency }, how };
}
