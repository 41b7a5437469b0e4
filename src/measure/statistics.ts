/** Arithmetic mean of at least one value; the deviations are summed once more, which takes out the rounding of the first pass. */
export function mean(values: readonly number[]): number {
  const rough = values.reduce((sum, value) => sum + value, 0) / values.length;
  return rough + values.reduce((sum, value) => sum + (value - rough), 0) / values.length;
}

/** Standard deviation with n − 1 below the line, of at least two values; two-pass, since the one-pass form fails on NIST's NumAcc4. */
export function standardDeviation(values: readonly number[]): number {
  const centre = mean(values);
  let squares = 0;
  let rest = 0;
  for (const value of values) {
    squares += (value - centre) ** 2;
    rest += value - centre;
  }
  return Math.sqrt((squares - rest ** 2 / values.length) / (values.length - 1));
}
