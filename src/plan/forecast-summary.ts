import type { Range } from './forecast-types.ts';

/** The values that 10, 50 and 90 % of the numbers do not exceed. */
export function rangeOf(numbers: Float64Array): Range {
  const sorted = numbers.toSorted();
  const at = (share: number) => sorted[Math.ceil(share * sorted.length) - 1] as number;
  return { low: at(0.1), middle: at(0.5), high: at(0.9) };
}

/**
 * Whole-day bars of one width, at most `most` of them, over all numbers. The outermost hundredth on each side is counted in the
 * outer bars, as a few draws of years would leave one bar to all others.
 */
export function histogramOf(
  days: Float64Array,
  most = 24,
): { from: number; to: number; draws: number }[] {
  const sorted = days.toSorted();
  const rank = Math.floor(sorted.length / 100);
  const first = sorted[rank] as number;
  const last = sorted[sorted.length - 1 - rank] as number;
  const width = Math.ceil((last - first + 1) / most);
  const bars = Array.from({ length: Math.ceil((last - first + 1) / width) }, (_, index) => ({
    from: first + index * width,
    to: first + (index + 1) * width - 1,
    draws: 0,
  }));
  for (const day of days) {
    const bar = bars[Math.floor((Math.min(Math.max(day, first), last) - first) / width)];
    if (bar) bar.draws++;
  }
  return bars;
}

/** Every `stride`-th number from `start`, `count` of them. */
export function columnOf(
  numbers: Float64Array,
  { start, stride, count }: { start: number; stride: number; count: number },
): Float64Array {
  return Float64Array.from({ length: count }, (_, row) => numbers[start + row * stride] as number);
}

/** The place of each number among all of them, from 0; equal ones share the middle of theirs. */
export function ranksOf(list: Float64Array): Float64Array {
  const sorted = list.toSorted();
  const places = new Map<number, number>();
  for (let from = 0, to = 0; from < sorted.length; from = to) {
    const value = sorted[from] as number;
    while (to < sorted.length && sorted[to] === value) to++;
    places.set(value, (from + to - 1) / 2);
  }
  return list.map((value) => places.get(value) as number);
}

/** Pearson's correlation; undefined when one of the two does not vary. Of ranks it is Spearman's (1904), which no outlier sways. */
export function correlation(one: Float64Array, other: Float64Array): number | undefined {
  const [meanX, meanY] = [meanOf(one), meanOf(other)];
  let [xx, xy, yy] = [0, 0, 0];
  for (let i = 0; i < one.length; i++) {
    const x = (one[i] as number) - meanX;
    const y = (other[i] as number) - meanY;
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  // The mean of equal numbers is a little off them, so what is left of their spread is no zero but next to it.
  const varies = (sum: number, mean: number) => sum > one.length * (1e-12 * mean) ** 2;
  return varies(xx, meanX) && varies(yy, meanY) ? xy / Math.sqrt(xx * yy) : undefined;
}

function meanOf(list: Float64Array): number {
  return list.reduce((sum, one) => sum + one, 0) / list.length;
}
