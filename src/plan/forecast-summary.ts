import type { Range } from './forecast-types.ts';

/** The values that 10, 50 and 90 % of the numbers do not exceed. */
export function rangeOf(numbers: Float64Array): Range {
  const sorted = numbers.toSorted();
  const at = (share: number) => sorted[Math.ceil(share * sorted.length) - 1] as number;
  return { low: at(0.1), middle: at(0.5), high: at(0.9) };
}

/** Whole-day bars of one width, at most `most` of them, over all numbers. */
export function histogramOf(
  days: Float64Array,
  most = 24,
): { from: number; to: number; draws: number }[] {
  const first = days.reduce((least, day) => Math.min(least, day));
  const last = days.reduce((latest, day) => Math.max(latest, day));
  const width = Math.ceil((last - first + 1) / most);
  const bars = Array.from({ length: Math.ceil((last - first + 1) / width) }, (_, index) => ({
    from: first + index * width,
    to: first + (index + 1) * width - 1,
    draws: 0,
  }));
  for (const day of days) {
    const bar = bars[Math.floor((day - first) / width)];
    if (bar) bar.draws++;
  }
  return bars;
}

/** Pearson's correlation of every `stride`-th number from `start` with a list; undefined when one of the two does not vary. */
export function correlation(
  numbers: Float64Array,
  list: Float64Array,
  { start, stride }: { start: number; stride: number } = { start: 0, stride: 1 },
): number | undefined {
  const count = list.length;
  let [meanX, meanY] = [0, 0];
  for (let i = 0; i < count; i++) {
    meanX += (numbers[start + i * stride] as number) / count;
    meanY += (list[i] as number) / count;
  }
  let [xx, xy, yy] = [0, 0, 0];
  for (let i = 0; i < count; i++) {
    const x = (numbers[start + i * stride] as number) - meanX;
    const y = (list[i] as number) - meanY;
    xx += x * x;
    xy += x * y;
    yy += y * y;
  }
  // The mean of equal numbers is a little off them, so what is left of their spread is no zero but next to it.
  const varies = (sum: number, mean: number) => sum > count * (1e-12 * mean) ** 2;
  return varies(xx, meanX) && varies(yy, meanY) ? xy / Math.sqrt(xx * yy) : undefined;
}
