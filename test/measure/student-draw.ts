import type { RandomStream } from '../../src/measure/random.ts';

/** Draws from Student's t with ν degrees of freedom (a whole number), one by one, as it is defined: for reference. */
export function studentDraw({ uniform, normal, chiSquare }: RandomStream, nu: number): number {
  // The inverse of the distribution, which is a closed form for these two.
  if (nu === 1) return Math.tan(Math.PI * (uniform() - 0.5));
  if (nu === 2) {
    const p = uniform();
    return (2 * p - 1) / Math.sqrt(2 * p * (1 - p));
  }
  return normal() / Math.sqrt(chiSquare(nu) / nu);
}
