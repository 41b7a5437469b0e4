import { coverageFactor } from './student-t.ts';

/** How a source of uncertainty is spread, for drawing from it. */
export type Shape = 'normal' | 'rectangular' | 'student';

/**
 * One independent source of uncertainty and how much of it a value carries, with its sign.
 * Two values that share a key share the source: that is how correlation is kept, through any number of formulas.
 */
export interface Component {
  /** Names the source: the scatter of one reading, the zero of one instrument. */
  readonly key: string;
  /** Sources of one group have their degrees of freedom in common. */
  readonly group: string;
  readonly name: string;
  /** Sensitivity × standard uncertainty, in the value's unit; the sign matters where a source is shared. */
  readonly u: number;
  readonly nu: number;
  readonly shape: Shape;
  /** How the standard uncertainty came about, with numbers put in. */
  readonly how: string;
}

/** A value and the sources of its uncertainty. No sources: nothing is known of it, which is not the same as exact. */
export interface Uncertain {
  readonly value: number;
  readonly components: readonly Component[];
}

/** Adds up sources that are the same: the parts of one key add with their signs. */
export function mergeComponents(components: readonly Component[]): Component[] {
  const merged = new Map<string, Component>();
  for (const component of components) {
    const before = merged.get(component.key);
    merged.set(component.key, before ? { ...before, u: before.u + component.u } : component);
  }
  return [...merged.values()];
}

/** Standard uncertainty: root of the sum of squares over independent sources (GUM 5.1.2, and 5.2.2 through the shared ones). */
export function standardUncertainty(components: readonly Component[]): number {
  return Math.hypot(...mergeComponents(components).map(({ u }) => u));
}

/**
 * Effective degrees of freedom by Welch–Satterthwaite (GUM G.4.1), a group of sources counting as one.
 * Infinity when every source is exactly known.
 */
export function effectiveFreedom(components: readonly Component[]): number {
  const merged = mergeComponents(components);
  const squares = new Map<string, { square: number; nu: number }>();
  for (const { group, u, nu } of merged)
    squares.set(group, { square: (squares.get(group)?.square ?? 0) + u ** 2, nu });
  const whole = [...squares.values()].reduce((sum, { square }) => sum + square, 0) ** 2;
  const below = [...squares.values()].reduce(
    (sum, { square, nu }) => sum + (Number.isFinite(nu) ? square ** 2 / nu : 0),
    0,
  );
  return below === 0 ? Number.POSITIVE_INFINITY : whole / below;
}

/** ν as it is used for the coverage factor: rounded to 0.1, then down to a whole number (at least 1). */
export function usedFreedom(nu: number): number {
  return Number.isFinite(nu) ? Math.max(1, Math.floor(Math.round(nu * 10) / 10)) : nu;
}

/** Expanded uncertainty at 95 %, or undefined where no source is known. */
export function expandedUncertainty(components: readonly Component[]): number | undefined {
  const u = standardUncertainty(components);
  return u === 0 ? undefined : u * coverageFactor(0.95, usedFreedom(effectiveFreedom(components)));
}

/** Correlation coefficient of two values through the sources they share. */
export function correlation(a: readonly Component[], b: readonly Component[]): number {
  const other = new Map(mergeComponents(b).map(({ key, u }) => [key, u]));
  const covariance = mergeComponents(a).reduce(
    (sum, { key, u }) => sum + u * (other.get(key) ?? 0),
    0,
  );
  return covariance / (standardUncertainty(a) * standardUncertainty(b));
}
