/** Probability that a standard normal number is below x, by the series of Abramowitz & Stegun 26.2.11. */
export function normalBelow(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; Math.abs(term) > 1e-18; n++) {
    term *= (x * x) / (2 * n + 1);
    sum += term;
  }
  return 0.5 + (sum * Math.exp((-x * x) / 2)) / Math.sqrt(2 * Math.PI);
}

/** Probability that a number of Student's t with ν degrees of freedom is below t, by Abramowitz & Stegun 26.7.3 and 26.7.4. */
export function studentBelow(t: number, nu: number): number {
  const angle = Math.atan(t / Math.sqrt(nu));
  const cosine = Math.cos(angle);
  const odd = nu % 2 === 1;
  // 1 + 1/2·cos² + 1·3/(2·4)·cos⁴ + … for even ν, cos + 2/3·cos³ + 2·4/(3·5)·cos⁵ + … for odd.
  let term = odd ? cosine : 1;
  let sum = nu === 1 ? 0 : term;
  for (let k = odd ? 3 : 2; k <= nu - 2; k += 2) {
    term *= (cosine * cosine * (k - 1)) / k;
    sum += term;
  }
  const inside = odd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
  return (1 + inside) / 2;
}
