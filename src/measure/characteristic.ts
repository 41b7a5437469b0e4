/** Characteristic function of Student's t at s = √ν·|t|: s^m·K_m(s) / (2^(m − 1)·Γ(m)) with m = ν/2, for whole ν. */
export function studentCharacteristic(nu: number, s: number): number {
  if (s < 1e-9) return 1;
  if (s > 700) return 0;
  const odd = (nu & 1) === 1;
  // Two neighbours and the recurrence of K_m (Abramowitz & Stegun 9.6.26), which is stable upwards.
  let before = odd ? Math.exp(-s) : s * besselK1(s);
  if (nu <= 2) return before;
  let now = odd ? before * (1 + s) : before + (s * s * besselK0(s)) / 2;
  for (let m = odd ? 1.5 : 2; 2 * m < nu; m++) {
    const next = now + (s * s * before) / (4 * m * (m - 1));
    before = now;
    now = next;
  }
  return now;
}

/** K₀ to about 1e-7 (Abramowitz & Stegun 9.8.5, 9.8.6). */
export function besselK0(x: number): number {
  if (x > 2) return (Math.exp(-x) / Math.sqrt(x)) * polynomial(2 / x, K0_FAR);
  return -Math.log(x / 2) * polynomial((x / 3.75) ** 2, I0_NEAR) + polynomial((x * x) / 4, K0_NEAR);
}

/** K₁ to about 1e-7 (Abramowitz & Stegun 9.8.7, 9.8.8). */
export function besselK1(x: number): number {
  if (x > 2) return (Math.exp(-x) / Math.sqrt(x)) * polynomial(2 / x, K1_FAR);
  return (
    Math.log(x / 2) * x * polynomial((x / 3.75) ** 2, I1_NEAR) +
    polynomial((x * x) / 4, K1_NEAR) / x
  );
}

const polynomial = (x: number, by: readonly number[]) =>
  by.reduceRight((sum, one) => sum * x + one, 0);

// Abramowitz & Stegun 9.8.1 and 9.8.3, which the logarithms near 0 are multiplied by.
const I0_NEAR = [1, 3.5156229, 3.0899424, 1.2067492, 0.2659732, 0.0360768, 0.0045813];
const I1_NEAR = [0.5, 0.87890594, 0.51498869, 0.15084934, 0.02658733, 0.00301532, 0.00032411];
const K0_NEAR = [-0.57721566, 0.4227842, 0.23069756, 0.0348859, 0.00262698, 0.0001075, 0.0000074];
const K0_FAR = [
  1.25331414, -0.07832358, 0.02189568, -0.01062446, 0.00587872, -0.0025154, 0.00053208,
];
const K1_NEAR = [1, 0.15443144, -0.67278579, -0.18156897, -0.01919402, -0.00110404, -0.00004686];
const K1_FAR = [
  1.25331414, 0.23498619, -0.0365562, 0.01504268, -0.00780353, 0.00325614, -0.00068245,
];
