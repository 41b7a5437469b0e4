import type { Money } from '../money/money.ts';
import { divideHalfAwayFromZero } from '../money/round.ts';
import type { Said } from '../words/said.ts';

/** A quotient kept exact; the divisor is above zero. */
export interface Ratio {
  readonly dividend: bigint;
  readonly divisor: bigint;
}

/** A finished phase with a budget: what was spent for each unit allowed. */
export interface FinishedPhase {
  readonly id: string;
  readonly name: Said;
  readonly budget: Money;
  readonly spent: Money;
  readonly ratio: Ratio;
}

/** How the builder's own finished phases compare with their budgets. */
export interface Overrun {
  /** From the smallest ratio to the largest. */
  readonly phases: readonly FinishedPhase[];
  readonly smallest: Ratio;
  readonly median: Ratio;
  readonly largest: Ratio;
}

/** Fewer phases than this say nothing of a habit. */
export const FEWEST_PHASES = 2;

/** Spent over budget of each finished phase with a budget above zero; undefined while there are fewer than two. */
export function overrunOf(finished: readonly Omit<FinishedPhase, 'ratio'>[]): Overrun | undefined {
  const phases = finished
    .filter(({ budget }) => budget.minor > 0)
    .map((phase) => ({ ...phase, ratio: ratioOf(phase.spent, phase.budget) }))
    .sort((a, b) => compare(a.ratio, b.ratio));
  const [smallest, largest] = [phases[0]?.ratio, phases.at(-1)?.ratio];
  if (phases.length < FEWEST_PHASES || !smallest || !largest) return undefined;
  return { phases, smallest, median: medianOf(phases.map(({ ratio }) => ratio)), largest };
}

/** An amount times a ratio, rounded half away from zero to whole minor units. */
export function scaled({ minor, currency }: Money, { dividend, divisor }: Ratio): Money {
  return { minor: Number(divideHalfAwayFromZero(BigInt(minor) * dividend, divisor)), currency };
}

/** A ratio as per cent with one decimal, for a reader. */
export function showRatio({ dividend, divisor }: Ratio, language: string): string {
  const thousandths = divideHalfAwayFromZero(dividend * 1000n, divisor);
  const format = new Intl.NumberFormat(language, {
    style: 'percent',
    minimumFractionDigits: 1,
    maximumFractionDigits: 1,
  });
  return format.format(Number(thousandths) / 1000).replace('-', '−');
}

function ratioOf(spent: Money, budget: Money): Ratio {
  return { dividend: BigInt(spent.minor), divisor: BigInt(budget.minor) };
}

/** The middle one; between two middle ones half way: (a/b + c/d) / 2 = (ad + cb) / 2bd. */
function medianOf(sorted: readonly Ratio[]): Ratio {
  const upper = sorted[Math.floor(sorted.length / 2)] as Ratio;
  if (sorted.length % 2 === 1) return upper;
  const lower = sorted[sorted.length / 2 - 1] as Ratio;
  return {
    dividend: lower.dividend * upper.divisor + upper.dividend * lower.divisor,
    divisor: 2n * lower.divisor * upper.divisor,
  };
}

function compare(a: Ratio, b: Ratio): number {
  const difference = a.dividend * b.divisor - b.dividend * a.divisor;
  if (difference === 0n) return 0;
  return difference < 0n ? -1 : 1;
}
