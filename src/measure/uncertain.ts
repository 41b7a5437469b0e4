import { combine, effectiveFreedom, expanded } from './uncertainty.ts';

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
  /** The zero that readings share it by. */
  readonly zero?: string;
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

/** What the sources of a value come to. */
export interface Spread {
  /** Standard uncertainty; undefined where nothing is known of it. */
  readonly u: number | undefined;
  readonly nu: number;
  /** Expanded uncertainty at 95 %. */
  readonly U: number | undefined;
}

/** Adds up sources that are the same: the parts of one key add with their signs. */
export function mergeComponents<T extends Pick<Component, 'key' | 'u'>>(
  components: readonly T[],
): T[] {
  return [...Map.groupBy(components, ({ key }) => key).values()].map((parts) => {
    const [first] = parts as [T, ...T[]];
    if (parts.length === 1) return first;
    const sum = parts.reduce((all, { u }) => all + u, 0);
    const largest = Math.max(...parts.map(({ u }) => Math.abs(u)));
    // Thirds that cancel leave a rounding behind, which would pass for an uncertainty of its own.
    return { ...first, u: Math.abs(sum) < 1e-14 * largest * parts.length ? 0 : sum };
  });
}

/** The same sources, each worth a factor more. */
export function scaleComponents<T extends Pick<Component, 'u'>>(
  components: readonly T[],
  by: number,
): T[] {
  return components.map((component) => ({ ...component, u: component.u * by }));
}

/** Standard uncertainty: root of the sum of squares over independent sources (GUM 5.1.2, and 5.2.2 through the shared ones). */
export function standardUncertainty(components: readonly Component[]): number {
  return combine(mergeComponents(components));
}

/** u, effective degrees of freedom (a group of sources counting as one) and U at 95 %. */
export function spreadOf(components: readonly Component[]): Spread {
  const groups = Map.groupBy(mergeComponents(components), ({ group }) => group);
  const parts = [...groups.values()].map((group) => ({
    u: combine(group),
    nu: group[0]?.nu ?? Number.POSITIVE_INFINITY,
  }));
  const u = combine(parts) || undefined;
  const nu = u === undefined ? Number.POSITIVE_INFINITY : effectiveFreedom(parts);
  return { u, nu, U: expanded({ u, nu }) };
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
