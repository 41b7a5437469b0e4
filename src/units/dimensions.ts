import type { QuantityKind } from './kinds.ts';

/** Exponents of the base units metre, kilogram, second, ampere, kelvin and lux (the one photometric unit used here). */
export type Dimension = readonly [
  m: number,
  kg: number,
  s: number,
  a: number,
  k: number,
  lx: number,
];

export const dimensionless: Dimension = [0, 0, 0, 0, 0, 0];

const of = (m: number, kg = 0, s = 0, a = 0, k = 0, lx = 0): Dimension => [m, kg, s, a, k, lx];

/** What a formula's arithmetic sees of each quantity kind. Angles, ratios and counts are numbers; two kinds may share a dimension and stay two. */
export const dimensionOf: Readonly<Record<QuantityKind, Dimension>> = {
  length: of(1),
  area: of(2),
  volume: of(3),
  mass: of(0, 1),
  'mass-per-length': of(-1, 1),
  density: of(-3, 1),
  force: of(1, 1, -2),
  torque: of(2, 1, -2),
  stiffness: of(0, 1, -2),
  damping: of(0, 1, -1),
  pressure: of(-1, 1, -2),
  temperature: of(0, 0, 0, 0, 1),
  'temperature-difference': of(0, 0, 0, 0, 1),
  angle: dimensionless,
  slope: dimensionless,
  time: of(0, 0, 1),
  speed: of(1, 0, -1),
  'rotational-speed': of(0, 0, -1),
  frequency: of(0, 0, -1),
  power: of(2, 1, -3),
  'specific-power': of(2, 0, -3),
  voltage: of(2, 1, -3, -1),
  current: of(0, 0, 0, 1),
  resistance: of(2, 1, -3, -2),
  charge: of(0, 0, 1, 1),
  flow: of(3, 0, -1),
  consumption: of(2),
  'spreading-rate': of(-1),
  illuminance: of(0, 0, 0, 0, 0, 1),
  'sound-level': dimensionless,
  ratio: dimensionless,
  count: dimensionless,
};

/** Whether two dimensions are the same; exponents may carry rounding of a root. */
export function sameDimension(a: Dimension, b: Dimension): boolean {
  return a.every((exponent, index) => Math.abs(exponent - (b[index] ?? 0)) < 1e-9);
}

/** A dimension in base units, for a message: `kg·m/s²` as `m·kg·s^-2`, or `a plain number`. */
export function showDimension(dimension: Dimension): string {
  const names = ['m', 'kg', 's', 'A', 'K', 'lx'];
  const parts = dimension.flatMap((exponent, index) => {
    if (Math.abs(exponent) < 1e-9) return [];
    return [exponent === 1 ? names[index] : `${names[index]}^${Number(exponent.toFixed(4))}`];
  });
  return parts.length > 0 ? parts.join('·') : 'a plain number';
}
