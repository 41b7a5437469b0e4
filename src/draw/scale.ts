/** Maps a value to per cent across, or to pixels down. */
export type Scale = (value: number) => number;

/** A straight scale from a range of values to a range of places. */
export function linearScale(
  [from, to]: readonly [number, number],
  [start, end]: readonly [number, number],
): Scale {
  const width = to - from;
  return (value) =>
    width === 0 ? (start + end) / 2 : start + ((value - from) / width) * (end - start);
}

/** The range of values with some air at both ends; a single value gets air of a tenth of its size. */
export function airy(values: readonly number[], share = 0.12): readonly [number, number] {
  const least = Math.min(...values);
  const most = Math.max(...values);
  const air = most > least ? (most - least) * share : Math.max(Math.abs(most) * 0.1, 1e-9);
  return [least - air, most + air];
}

/** About `count` round numbers inside a range: 1, 2 or 5 times a power of ten apart. */
export function roundTicks([from, to]: readonly [number, number], count: number): number[] {
  const rough = (to - from) / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step =
    [1, 2, 5, 10].map((factor) => factor * power).find((candidate) => candidate >= rough) ?? rough;
  const first = Math.ceil(from / step - 1e-9);
  const last = Math.floor(to / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
}
