/** One size of content: how much there is, and how long it took. */
export interface Point {
  readonly amount: number;
  readonly seconds: number;
}

/** The exponent p of seconds ~ amount^p: the slope of the straight line through the logarithms. Undefined for less than two points. */
export function growth(points: readonly Point[]): number | undefined {
  const logs = points.map(({ amount, seconds }) => [Math.log(amount), Math.log(seconds)] as const);
  if (logs.length < 2) return undefined;
  const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;
  const [x, y] = [mean(logs.map(([a]) => a)), mean(logs.map(([, b]) => b))];
  const run = logs.reduce((sum, [a]) => sum + (a - x) ** 2, 0);
  return logs.reduce((sum, [a, b]) => sum + (a - x) * (b - y), 0) / run;
}
