/** Least, most likely and most, of a duration or of hours. */
export interface ThreePoint {
  readonly least: number;
  readonly likely: number;
  readonly most: number;
}

/** Mean and variance of an estimate. */
export interface Estimated {
  readonly mean: number;
  readonly variance: number;
}

/** PERT (Malcolm, Roseboom, Clark and Fazar, 1959): mean (a + 4m + b)/6, standard deviation (b − a)/6. */
export function estimate({ least, likely, most }: ThreePoint): Estimated {
  return { mean: (least + 4 * likely + most) / 6, variance: ((most - least) / 6) ** 2 };
}

/** Mean and variance of a path: its activities are taken as independent, so both add up. */
export function estimatePath(path: readonly ThreePoint[]): Estimated {
  return path
    .map(estimate)
    .reduce((sum, one) => ({ mean: sum.mean + one.mean, variance: sum.variance + one.variance }), {
      mean: 0,
      variance: 0,
    });
}

/** Probability that a path is done by `deadline`, its length taken as normal; 0 or 1 where nothing is uncertain. */
export function probabilityBy(deadline: number, { mean, variance }: Estimated): number {
  if (variance === 0) return deadline >= mean ? 1 : 0;
  return normalBelow((deadline - mean) / Math.sqrt(variance));
}

/** Φ(x) by the series of Abramowitz and Stegun 26.2.11; beyond ±8 a double holds nothing but 0 and 1. */
function normalBelow(x: number): number {
  if (Math.abs(x) > 8) return x > 0 ? 1 : 0;
  let term = x;
  let sum = x;
  for (let n = 1; Math.abs(term) > 1e-18; n++) {
    term *= (x * x) / (2 * n + 1);
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-x * x) / 2)) / Math.sqrt(2 * Math.PI);
}
