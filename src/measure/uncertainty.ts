import { coverageFactor } from './student-t.ts';

/** One part of a standard uncertainty, and the degrees of freedom that stand behind it. */
export interface Part {
  readonly u: number;
  readonly nu: number;
}

/** Combined standard uncertainty of independent parts, root of the sum of squares (GUM 5.1.2). */
export function combine(parts: readonly Pick<Part, 'u'>[]): number {
  return Math.hypot(...parts.map(({ u }) => u));
}

/** Effective degrees of freedom by Welch–Satterthwaite (GUM G.4.1); Infinity when every part is exactly known. */
export function effectiveFreedom(parts: readonly Part[]): number {
  const whole = combine(parts) ** 4;
  const below = parts.reduce((sum, { u, nu }) => sum + (Number.isFinite(nu) ? u ** 4 / nu : 0), 0);
  return below === 0 ? Number.POSITIVE_INFINITY : whole / below;
}

/** ν as it is used for the coverage factor: rounded to 0.1, then down to a whole number (at least 1). */
export function usedFreedom(nu: number): number {
  return Number.isFinite(nu) ? Math.max(1, Math.floor(Math.round(nu * 10) / 10)) : nu;
}

/** Expanded uncertainty U at 95 % coverage, or undefined where u is. */
export function expanded({
  u,
  nu,
}: {
  readonly u: number | undefined;
  readonly nu: number;
}): number | undefined {
  return u === undefined ? undefined : u * coverageFactor(0.95, usedFreedom(nu));
}

/** Decimals that show two significant digits of U: 0.0123 → 3, 12 → 0, 340 → −1. */
export function decimalsFor(size: number): number {
  const exponent = Math.floor(Math.log10(size));
  // 0.0996 rounds up to 0.10, which needs one decimal fewer.
  const rounded = Number(size.toPrecision(2));
  return 1 - (Math.log10(rounded) >= exponent + 1 ? exponent + 1 : exponent);
}
