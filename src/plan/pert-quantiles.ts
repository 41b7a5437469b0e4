import type { ThreePoint } from './three-point.ts';

const STEPS = 1024;

/**
 * The beta distribution that PERT stands on, between least and most, with its mean at (a + 4m + b)/6:
 * α = 1 + 4(m − a)/(b − a), β = 6 − α. As a table of values at evenly spread probabilities, from 0 to 1, to draw from.
 */
export function pertQuantiles({ least, likely, most }: ThreePoint): Float64Array {
  const table = new Float64Array(STEPS + 1).fill(least);
  const width = most - least;
  if (width <= 0) return table;

  const alpha = 1 + (4 * (likely - least)) / width;
  const below = runningShares(alpha - 1, 5 - alpha);
  let cell = 0;
  for (let step = 0; step <= STEPS; step++) {
    const share = step / STEPS;
    while (cell < STEPS - 1 && (below[cell + 1] as number) < share) cell++;
    const [from, to] = [below[cell] as number, below[cell + 1] as number];
    const inside = to > from ? (share - from) / (to - from) : 0;
    table[step] = least + (width * (cell + Math.min(1, inside))) / STEPS;
  }
  return table;
}

/** Value of the table at a probability in [0, 1), straight between two entries. */
export function quantileAt(table: Float64Array, probability: number): number {
  const place = probability * STEPS;
  const cell = Math.floor(place);
  const from = table[cell] as number;
  return from + (place - cell) * ((table[cell + 1] as number) - from);
}

/** Share of x^p·(1 − x)^q below each of evenly spread x, by the midpoint rule. */
function runningShares(p: number, q: number): Float64Array {
  const sums = new Float64Array(STEPS + 1);
  for (let cell = 0; cell < STEPS; cell++) {
    const x = (cell + 0.5) / STEPS;
    sums[cell + 1] = (sums[cell] as number) + x ** p * (1 - x) ** q;
  }
  const whole = sums[STEPS] as number;
  return sums.map((sum) => sum / whole);
}
