/** Those that are not more; a loop, since a typed array's own filter took longer than the draws. */
export function upTo(most: number, all: Float64Array): Float64Array {
  const some = new Float64Array(all.length);
  let count = 0;
  for (let i = 0; i < all.length; i++) {
    const one = all[i] as number;
    if (one <= most) some[count++] = one;
  }
  return some.subarray(0, count);
}

/** The draw of a rank (from 0), between two of them in proportion. */
export function valueAt(sorted: Float64Array, rank: number): number {
  const from = Math.min(Math.max(Math.floor(rank), 0), sorted.length - 1);
  const to = Math.min(from + 1, sorted.length - 1);
  const [a, b] = [sorted[from] as number, sorted[to] as number];
  return a === b ? a : a + Math.min(Math.max(rank - from, 0), 1) * (b - a);
}
