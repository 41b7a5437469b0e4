import type { RandomStream } from '../measure/random.ts';
import { coverageFactor } from '../measure/student-t.ts';

/**
 * What finished phases say about those to come. Ratios of actual to planned hours are taken as log-normal, level and spread both
 * unknown, so that a few of them give a wide answer and many a narrow one.
 */
export interface Habit {
  /** Finished phases. */
  readonly count: number;
  /** Mean of the logarithms. */
  readonly level: number;
  /** Standard deviation of the logarithms, the published one counted in. */
  readonly spread: number;
  /** Degrees of freedom of the spread. */
  readonly freedom: number;
}

/** One habit among those that the finished phases leave possible. */
export interface DrawnHabit {
  readonly level: number;
  readonly spread: number;
}

/**
 * Spread to begin with: two phases that came out alike by chance do not prove that the third will. A budget estimate (class 3 of
 * AACE 18R-97) is off by −20 to +30 %, read as an 80 % range (from memory), which is 1.2816 standard deviations to each side.
 */
export const FIRST_SPREAD = Math.log(1.3 / 0.8) / (2 * 1.2815515655);

/** It weighs as much as one finished phase (the unit information prior of Kass and Wasserman, 1995), so it is soon outweighed. */
const FIRST_WEIGHT = 1;

/** Level and spread of past ratios, of which there is at least one. */
export function habitOf(ratios: readonly number[]): Habit {
  const count = ratios.length;
  const logs = ratios.map(Math.log);
  const level = logs.reduce((sum, log) => sum + log, 0) / count;
  const squares = logs.reduce((sum, log) => sum + (log - level) ** 2, 0);
  const freedom = count - 1 + FIRST_WEIGHT;
  const spread = Math.sqrt((squares + FIRST_WEIGHT * FIRST_SPREAD ** 2) / freedom);
  return { count, level, spread, freedom };
}

/** The ratio that half of the phases to come will stay below: the geometric mean of the past ones. */
export function typicalRatio(ratios: readonly number[]): number {
  return Math.exp(habitOf(ratios).level);
}

/** From which to which ratio the next phase will come out in 80 % of cases: level ± t·spread·√(1 + 1/n), Student's t. */
export function likelyRatios(ratios: readonly number[]): { low: number; high: number } {
  const { count, level, spread, freedom } = habitOf(ratios);
  const reach = coverageFactor(0.8, freedom) * spread * Math.sqrt(1 + 1 / count);
  return { low: Math.exp(level - reach), high: Math.exp(level + reach) };
}

/**
 * Draws a habit: first its variance, by χ², then its level around that of the past, by the variance over the count. A phase drawn
 * from it follows Student's t, and phases drawn from the same one lean the same way (Gelman et al., Bayesian Data Analysis, 3.2).
 */
export function drawHabit(
  { count, level, spread, freedom }: Habit,
  { normal, chiSquare }: RandomStream,
): DrawnHabit {
  const drawn = spread * Math.sqrt(freedom / chiSquare(freedom));
  return { level: level + (drawn * normal()) / Math.sqrt(count), spread: drawn };
}
