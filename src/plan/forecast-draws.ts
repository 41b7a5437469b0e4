import { type RandomStream, randomStream } from '../measure/random.ts';
import type { ForecastPhase, ForecastWait, PastRatio } from './forecast-types.ts';
import { type DrawnHabit, drawHabit, habitOf } from './habit.ts';
import { seedFor } from './keyed-random.ts';
import { pertQuantiles, quantileAt } from './pert-quantiles.ts';
import { estimate } from './three-point.ts';
import type { PaceDraws } from './work-clock.ts';

/** Everything uncertain, drawn beforehand: minutes left of each phase and the end of each wait, draw after draw. */
export interface Draws {
  readonly count: number;
  /** By draw, then by phase. */
  readonly minutes: Float64Array;
  /** Days after the start, by draw, then by wait. */
  readonly waits: Float64Array;
  readonly pace: PaceDraws;
}

/** Which draws to make. */
export interface DrawOptions {
  readonly seed: number;
  readonly draws: number;
}

// A phase that has outrun every estimate is not thereby done; a tenth of its plan is left (our assumption, no source).
export const LEAST_LEFT = 0.1;
const TRIES = 64;

/** Actual over planned minutes of the finished phases; a phase without hours, or planned at none, tells nothing. */
export function pastRatios(phases: readonly ForecastPhase[]): PastRatio[] {
  return phases
    .filter(({ state, spent, planned }) => state === 'finished' && spent > 0 && meanOf(planned) > 0)
    .map(({ id, spent, planned }) => ({ id, ratio: spent / meanOf(planned) }));
}

/** Planned minutes; of three numbers their mean. */
export function meanOf(planned: ForecastPhase['planned']): number {
  return typeof planned === 'number' ? planned : estimate(planned).mean;
}

/** Lists drawn from one list, each `width` long, one after another. */
export interface Resampled {
  readonly values: Float64Array;
  readonly width: number;
}

/**
 * Draws from a list with replacement, `count` times a new list (Efron's bootstrap, 1979): what is drawn from such lists carries
 * how little a short list says. They are one shorter than the first, which makes their means vary as much as means of such lists
 * do, where the same length makes it too little (Rao and Wu, 1988).
 */
export function resample(list: readonly number[], seed: number, count: number): Resampled {
  const stream = randomStream(seed);
  const width = Math.max(1, list.length - 1);
  const values = new Float64Array(count * width);
  for (let i = 0; i < values.length; i++)
    values[i] = list[Math.floor(stream.uniform() * list.length)] as number;
  return { values, width };
}

/**
 * Minutes left of each phase in each draw, all phases of a draw by the same habit. An estimate of one number takes level and spread
 * from it. One of three brings its own spread, so it takes the level only.
 */
export function drawMinutes(
  phases: readonly ForecastPhase[],
  ratios: readonly number[],
  { seed, draws }: DrawOptions,
): Float64Array {
  const habit = habitOf(ratios);
  const stream = randomStream(seedFor(seed, 'habit'));
  const habits = Array.from({ length: draws }, () => drawHabit(habit, stream));
  const minutes = new Float64Array(draws * phases.length);
  for (const [index, phase] of phases.entries()) {
    const total = totalOf(phase.planned, randomStream(seedFor(seed, `phase ${phase.id}`)));
    for (const [draw, drawn] of habits.entries())
      minutes[draw * phases.length + index] = leftOf(phase, () => total(drawn));
  }
  return minutes;
}

function totalOf(
  planned: ForecastPhase['planned'],
  { normal, uniform }: RandomStream,
): (habit: DrawnHabit) => number {
  if (typeof planned === 'number')
    return ({ level, spread }) => planned * Math.exp(level + spread * normal());

  const table = pertQuantiles(planned);
  return ({ level }) => quantileAt(table, uniform()) * Math.exp(level);
}

/** Only totals above what is spent can still come true, so others are drawn anew. */
function leftOf({ planned, spent }: ForecastPhase, drawTotal: () => number): number {
  for (let tries = spent > 0 ? TRIES : 1; tries > 0; tries--) {
    const left = drawTotal() - spent;
    if (left > 0 || spent === 0) return left;
  }
  return LEAST_LEFT * meanOf(planned);
}

/** End of each wait in days after the start, evenly spread over its days; a day gone by has come to nothing, so it is today. */
export function drawWaits(
  waits: readonly ForecastWait[],
  asOf: number,
  { seed, draws }: DrawOptions,
): Float64Array {
  const ends = new Float64Array(draws * waits.length);
  for (const [index, { id, from, to }] of waits.entries()) {
    const { uniform } = randomStream(seedFor(seed, `wait ${id}`));
    const days = Math.max(0, to - from) + 1;
    for (let draw = 0; draw < draws; draw++) {
      const day = from + Math.floor(uniform() * days);
      ends[draw * waits.length + index] = Math.max(0, day - asOf - 1);
    }
  }
  return ends;
}

/** The pace of each draw. */
export function drawPace(weeks: readonly number[], { seed, draws }: DrawOptions): PaceDraws {
  const { values, width } = resample(weeks, seedFor(seed, 'pace'), draws);
  return { values, width, seed: seedFor(seed, 'weeks') };
}

/** Mean of each list. */
export function meansOf({ values, width }: Resampled): Float64Array {
  const means = new Float64Array(values.length / width);
  for (let i = 0; i < values.length; i++) {
    const row = Math.floor(i / width);
    means[row] = (means[row] as number) + (values[i] as number) / width;
  }
  return means;
}
