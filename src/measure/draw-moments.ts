import type { DrawBlock } from './draw-blocks.ts';
import { isStudent } from './even-draws.ts';
import type { LinearTerm } from './linear-part.ts';

/** Mean and standard deviation of draws, told by how they differ from those of the linear part where that makes them surer. */
export class DrawMoments {
  readonly #centre: number;
  #count = 0;
  #sum = 0;
  #squares = 0;
  #linearSum = 0;
  #linearSquares = 0;
  #apartSquares = 0;

  constructor(centre: number) {
    this.#centre = centre;
  }

  add({ y, linear }: DrawBlock): void {
    this.#count += y.length;
    for (let i = 0; i < y.length; i++) {
      const offset = (y[i] as number) - this.#centre;
      const other = linear[i] as number;
      this.#sum += offset;
      this.#squares += offset * offset;
      this.#linearSum += other;
      this.#linearSquares += other * other;
      this.#apartSquares += (offset - other) ** 2;
    }
  }

  /** With the exact variance of the linear part, where it has one. */
  result(linearVariance: number): { mean: number; u: number } {
    const count = this.#count;
    const spreadOf = (sum: number, squares: number) => (squares - sum ** 2 / count) / (count - 1);
    const plain = spreadOf(this.#sum, this.#squares);
    const linear = spreadOf(this.#linearSum, this.#linearSquares);
    const apart = spreadOf(this.#sum - this.#linearSum, this.#apartSquares);
    const steered = linearVariance + plain - linear;
    if (Number.isFinite(linearVariance) && apart < plain && steered > 0) {
      const mean = this.#centre + (this.#sum - this.#linearSum) / count;
      return { mean, u: Math.sqrt(steered) };
    }
    return { mean: this.#centre + this.#sum / count, u: Math.sqrt(Math.max(plain, 0)) };
  }
}

/** Variance of a sum of sources as they are drawn: Student's t is wider than its u by ν/(ν − 2), and has none up to ν = 2. */
export function varianceOfSum(terms: readonly LinearTerm[]): number {
  return terms.reduce((sum, term) => {
    if (term.u === 0 || !isStudent(term)) return sum + term.u ** 2;
    return sum + (term.nu > 2 ? (term.u ** 2 * term.nu) / (term.nu - 2) : Number.POSITIVE_INFINITY);
  }, 0);
}
