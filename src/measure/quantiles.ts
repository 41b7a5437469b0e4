/** A distribution that a source of mean 0 is drawn from: where a share p of it lies below. `from` is a place between there and the middle, to begin at. */
export type Quantile = (p: number, from?: number) => number;

/** The standardised rectangular distribution, from −√3 to √3. */
export const rectangularQuantile: Quantile = (p) => Math.sqrt(3) * (2 * p - 1);

/** The standard normal distribution. */
export const normalQuantile: Quantile = (p, from = 0) =>
  p > 0.5
    ? -solve(1 - p, -from, [normalBelow, normalDensity])
    : solve(p, from, [normalBelow, normalDensity]);

/** Student's t with ν degrees of freedom, a whole number. */
export function studentQuantile(nu: number): Quantile {
  if (nu === 1) return (p) => -1 / Math.tan(Math.PI * p);
  if (nu === 2) return (p) => (2 * p - 1) / Math.sqrt(2 * p * (1 - p));
  const peak = peakOf(nu);
  const density = (t: number) => peak * (1 + (t * t) / nu) ** (-(nu + 1) / 2);
  const below = (t: number) => studentBelow(t, nu);
  return (p, from = 0) =>
    p > 0.5 ? -solve(1 - p, -from, [below, density]) : solve(p, from, [below, density]);
}

/** Newton's steps from the middle outwards: below it a distribution bends one way, so that none goes too far. */
function solve(
  p: number,
  from: number,
  [below, density]: readonly [below: (x: number) => number, density: (x: number) => number],
): number {
  let x = from;
  for (let step = 0; step < 200; step++) {
    const by = (below(x) - p) / density(x);
    x -= by;
    if (Math.abs(by) < 1e-9 * (1 + Math.abs(x))) break;
  }
  return x;
}

const normalDensity = (x: number) => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);

/** Abramowitz & Stegun 26.2.11, and their continued fraction 26.2.14 where the series would lose digits. */
function normalBelow(x: number): number {
  if (x < -5) {
    let rest = 0;
    for (let n = 40; n > 0; n--) rest = n / (rest - x);
    return normalDensity(x) / (rest - x);
  }
  let term = x;
  let sum = x;
  for (let n = 1; Math.abs(term) > 1e-17; n++) {
    term *= (x * x) / (2 * n + 1);
    sum += term;
  }
  return 0.5 + sum * normalDensity(x);
}

/** Density of Student's t at 0, Γ((ν + 1)/2) / (√(νπ)·Γ(ν/2)), stepped up from ν = 1 or 2. */
function peakOf(nu: number): number {
  let ratio = nu & 1 ? 1 / Math.sqrt(Math.PI) : Math.sqrt(Math.PI) / 2;
  for (let at = nu & 1 ? 1 : 2; at < nu; at += 2) ratio *= (at + 1) / at;
  return ratio / Math.sqrt(nu * Math.PI);
}

/** Abramowitz & Stegun 26.7.3 and 26.7.4. */
function studentBelow(t: number, nu: number): number {
  const angle = Math.atan(t / Math.sqrt(nu));
  const cosine = Math.cos(angle);
  const odd = (nu & 1) === 1;
  let term = odd ? cosine : 1;
  let sum = term;
  for (let k = odd ? 3 : 2; k <= nu - 2; k += 2) {
    term *= (cosine * cosine * (k - 1)) / k;
    sum += term;
  }
  const inside = odd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
  return (1 + inside) / 2;
}
