/**
 * Two-sided coverage factor of Student's t: the t with P(|T| ≤ t) = p for ν degrees of freedom.
 * Found by bisection on the regularised incomplete beta function; good to about 1e-10. ν may be Infinity (normal distribution).
 */
export function coverageFactor(p: number, nu: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`coverage probability ${p} is not between 0 and 1`);
  if (!(nu >= 1)) throw new RangeError(`degrees of freedom ${nu} are fewer than 1`);

  const key = `${p} ${nu}`;
  const found = factors.get(key) ?? bisect(p, nu);
  factors.set(key, found);
  return found;
}

/** Most readings have a few repeats, so the same few factors are asked for again and again. */
const factors = new Map<string, number>();

function bisect(p: number, nu: number): number {
  let low = 0;
  let high = 1;
  while (insideProbability(high, nu) < p) high *= 2;
  for (let step = 0; step < 80; step++) {
    const middle = (low + high) / 2;
    if (insideProbability(middle, nu) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** P(|T| ≤ t). For large ν the beta function loses digits, so above 1e7 the normal limit stands in. */
function insideProbability(t: number, nu: number): number {
  if (nu > 1e7) return 1 - regularisedUpperGammaHalf((t * t) / 2);
  return 1 - regularisedBeta(nu / (nu + t * t), nu / 2, 0.5);
}

/** Q(1/2, x) = erfc(√x), by its series near 0 and its continued fraction beyond (Abramowitz & Stegun 6.5.29, 6.5.31). */
function regularisedUpperGammaHalf(x: number): number {
  if (x === 0) return 1;
  const scale = Math.sqrt(x / Math.PI) * Math.exp(-x);
  if (x < 1.5) {
    let term = 2;
    let sum = term;
    for (let n = 1; n < 200 && term > 1e-17 * sum; n++) {
      term *= x / (n + 0.5);
      sum += term;
    }
    return 1 - scale * sum;
  }
  let b = x + 0.5;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let i = 1; i < 500; i++) {
    const a = -i * (i - 0.5);
    b += 2;
    d = 1 / (a * d + b);
    c = b + a / c;
    h *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return scale * h;
}

/** I_x(a, b), by its continued fraction (Abramowitz & Stegun 26.5.8, Lentz's method). */
function regularisedBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - regularisedBeta(1 - x, b, a);

  const front = Math.exp(a * Math.log(x) + b * Math.log(1 - x) - logBeta(a, b)) / a;
  const tiny = 1e-300;
  let c = 1;
  let d = 1 / nonZero(1 - ((a + b) * x) / (a + 1), tiny);
  let h = d;
  for (let m = 1; m < 1000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / nonZero(1 + even * d, tiny);
    c = nonZero(1 + even / c, tiny);
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / nonZero(1 + odd * d, tiny);
    c = nonZero(1 + odd / c, tiny);
    const step = d * c;
    h *= step;
    if (Math.abs(step - 1) < 1e-15) break;
  }
  return front * h;
}

function nonZero(value: number, tiny: number): number {
  return Math.abs(value) < tiny ? tiny : value;
}

function logBeta(a: number, b: number): number {
  return logGamma(a) + logGamma(b) - logGamma(a + b);
}

/** ln Γ(z) by Stirling's series (Abramowitz & Stegun 6.1.41), after stepping z up to where it converges. */
function logGamma(z: number): number {
  let shift = 0;
  let x = z;
  while (x < 20) {
    shift += Math.log(x);
    x += 1;
  }
  const inverse = 1 / (x * x);
  const series = (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse / 1680))) / x;
  return (x - 0.5) * Math.log(x) - x + Math.log(2 * Math.PI) / 2 + series - shift;
}
