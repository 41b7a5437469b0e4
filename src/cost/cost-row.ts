import type { FigureRow } from '../book/figure.ts';
import { type Standing, standsOn } from '../ledger/standing.ts';
import type { CostRecord, ProjectInfo, Rate } from '../model/kinds.ts';
import { allocate, wholeWeights } from '../money/allocate.ts';
import { convert, type Money, negate, toMinor, zero } from '../money/money.ts';
import { taxOf } from '../money/tax.ts';
import type { Day } from '../time/day.ts';
import { type Share, sharesOf } from './shares.ts';

/** A recorded rate, and when it counts. */
export type StandingRate = Rate & Standing;

type Kept = Omit<
  CostRecord,
  'amount' | 'tax' | 'phase' | 'splitPhases' | 'parts' | 'splitParts' | 'share'
>;

/** A cost row of the book: what was paid, and what it counts for in the project's currency. Credits are negative. */
export interface CostRow extends Kept, FigureRow, Standing {
  /** As written on the receipt, tax and all, with its sign. */
  readonly paid: Money;
  /** The tax in it, when the row says. */
  readonly tax: Money | undefined;
  /** What counts for this machine, in the project's currency, with its sign. */
  readonly counted: Money;
  /** What of it is for other machines: the rest of a shared tool. */
  readonly elsewhere: Money;
  /** The recorded rate it was converted at, when the two currencies differ. */
  readonly rate: StandingRate | undefined;
  /** Whether it is in the totals: tools, gifts and trades may be out by rule of the project. */
  readonly inTotals: boolean;
  /** The phases that share it, and the parts; their shares add up to `counted`. No phase for withheld amounts. */
  readonly phases: readonly Share[];
  readonly parts: readonly Share[];
  /** Set where the row is one share of a row: what the whole row counts for. */
  readonly shareOf?: Money;
  /** Set where the row stands for so many rows whose amounts are not published. */
  readonly withheldRows?: number;
}

/** What turns a record into a row. */
export interface CostContext {
  readonly currency: string;
  readonly rules: ProjectInfo['rules'];
  readonly rates: readonly StandingRate[];
  readonly standing: Standing;
}

const CREDITS: ReadonlySet<string> = new Set(['sale', 'scrap', 'refund', 'deposit-back']);

/** Whether a kind of cost row brings money in. */
export function isCredit(kind: CostRecord['kind']): boolean {
  return CREDITS.has(kind);
}

/** Whether a kind of cost row is money for something given away for good: sold, or weighed in. */
export function isTakings(kind: CostRecord['kind']): boolean {
  return kind === 'sale' || kind === 'scrap';
}

/** Whether a kind of cost row is money at all. */
export function isMoney(kind: CostRecord['kind']): boolean {
  return kind !== 'gift' && kind !== 'trade';
}

/**
 * A cost record with its sign, its value in the project's currency at the newest rate on or before its day, and whether it counts.
 * One row, or several that follow one another when a rate that it was converted at was corrected later.
 * None when its amount has no currency or no rate, which the check has said already.
 */
export function costRows(record: CostRecord, context: CostContext): readonly CostRow[] {
  const paidIn = record.amount.currency ?? context.currency;
  const size = toMinor(record.amount.decimal, paidIn);
  if (size === undefined) return [];

  const tax = record.tax && record.taxRate ? taxOf(size, record.taxRate, record.tax) : undefined;
  const sign = isCredit(record.kind) ? negate : (money: Money) => money;
  const paid = sign(tax?.withTax ?? size);
  const make = (rate: StandingRate | undefined, standing: Standing): CostRow => {
    const whole = rate ? convert(paid, rate.rate, context.currency) : paid;
    return finish(record, { paid, tax: tax && sign(tax.tax), whole, rate, standing, context });
  };
  if (paidIn === context.currency) return [make(undefined, context.standing)];
  return ratesInTurn(record.date, paidIn, context).map(({ rate, standing }) =>
    make(rate, standing),
  );
}

interface Making {
  readonly paid: Money;
  readonly tax: Money | undefined;
  readonly whole: Money;
  readonly rate: StandingRate | undefined;
  readonly standing: Standing;
  readonly context: CostContext;
}

function finish(
  record: CostRecord,
  { paid, tax, whole, rate, standing, context }: Making,
): CostRow {
  const { amount, tax: side, phase, splitPhases, parts, splitParts, share, ...kept } = record;
  const { tools } = context.rules;
  const rule = record.category === 'tool' && typeof tools === 'object' ? tools.percent : '100';
  const [counted = whole, elsewhere = zero(whole.currency)] = cut(whole, share ?? rule);
  return {
    ...kept,
    ...standing,
    paid,
    tax,
    counted,
    elsewhere,
    rate,
    inTotals: isIn(record, context.rules),
    phases: sharesOf(splitPhases ?? (phase ? [{ id: phase, weight: '1' }] : []), counted),
    parts: sharesOf(splitParts ?? (parts ?? []).map((id) => ({ id, weight: '1' })), counted),
  };
}

/** What is in for this machine, and the rest. */
function cut(whole: Money, percent: string): readonly Money[] {
  const [mine = 100n, hundred = 100n] = wholeWeights([percent, '100']);
  // More than the whole is refused by the check; the book can still be opened.
  if (mine >= hundred) return [whole];
  return allocate(whole, [mine, hundred - mine]);
}

/** What money counts for in the totals by the project's rule for shop tools: all of it, a share, or nothing. */
export function countsAs(
  category: CostRecord['category'],
  money: Money,
  { tools }: ProjectInfo['rules'],
): Money {
  if (category !== 'tool' || tools === 'in') return money;
  return tools === 'out' ? zero(money.currency) : (cut(money, tools.percent)[0] ?? money);
}

function isIn({ kind, category }: CostRecord, rules: CostContext['rules']): boolean {
  if (kind === 'gift' && rules.gifts === 'out') return false;
  if (kind === 'trade' && rules.trades === 'out') return false;
  return category !== 'tool' || rules.tools !== 'out';
}

/** The rates that a day's amount was converted at, one after the other as corrections were written down. */
function ratesInTurn(date: Day, from: string, { currency, rates, standing }: CostContext) {
  const usable = rates.filter(
    (rate) => rate.from === from && rate.to === currency && rate.date <= date,
  );
  const start = standing.since ?? date;
  const turns = usable
    .flatMap((rate) => [rate.since ?? start, rate.until ?? start])
    .filter((day) => day > start && (standing.until === undefined || day < standing.until));
  const days = [...new Set([start, ...turns])].sort();
  return days.flatMap((day, index) => {
    const rate = usable.findLast((candidate) => standsOn(candidate, day));
    if (rate === undefined) return [];
    const first = index === 0 ? standing.since : (day as Day);
    return [
      { rate, standing: { since: first, until: (days[index + 1] as Day) ?? standing.until } },
    ];
  });
}
