import { studentCharacteristic } from './characteristic.ts';
import { coverageFactor } from './student-t.ts';
import type { Component } from './uncertain.ts';

/** A source as it moves a result, for the distribution of their sum. */
export type LinearTerm = Pick<Component, 'group' | 'u' | 'nu' | 'shape'>;

/** Sources of one kind put together: all normal ones are one, all of one spread are one t. */
interface Part {
  readonly shape: Component['shape'];
  readonly u: number;
  readonly nu: number;
}

const POINTS = 1 << 15;
/** One for all sums, one after the other: big arrays are dear to throw away. */
const weights = new Float64Array(POINTS);

/**
 * The x that 95 % of the sum of these sources of mean 0 lie within, ± x, without chance: the sum is even, so
 * P(|L| ≤ x) = 2/π·∫ sin(tx)·φ(t)/t dt with the product φ of real characteristic functions, summed at the middles of steps h.
 * What the steps do wrong is at most what L has within x of 2π/h (Davies 1973), which is kept below a millionth.
 */
export function coverOfSum(terms: readonly LinearTerm[], p = 0.95): number | undefined {
  const parts = partsOf(terms);
  const [only] = parts;
  if (only === undefined) return undefined;
  if (parts.length === 1) return only.u * coverOfOne(only, p);

  const scale = Math.hypot(...parts.map(({ u }) => u));
  const widest = parts.reduce((sum, part) => sum + part.u * coverOfOne(part, p), 0);
  const reach = parts.reduce((sum, part) => sum + part.u * reachOf(part), widest);
  // A little more, since where the steps turn wrong is blurred.
  const step = (2 * Math.PI) / (1.1 * reach);
  let count = 0;
  for (; count < POINTS; count++) {
    const t = (count + 0.5) * step;
    let [value, envelope] = [1, 1];
    for (const part of parts) {
      const one = characteristicOf(part, t);
      value *= one;
      envelope *= part.shape === 'rectangular' ? Math.min(1, 1 / (Math.sqrt(3) * part.u * t)) : one;
    }
    weights[count] = ((2 / Math.PI) * value) / (count + 0.5);
    if (envelope < 1e-8 * Math.max(1, t * scale)) break;
  }
  return solve(weights.subarray(0, count), step, { p, start: scale * 2, widest });
}

/** Newton's steps, halved back into what is known to hold the answer where one leaves it. */
function solve(
  weights: Float64Array,
  step: number,
  { p, start, widest }: { p: number; start: number; widest: number },
): number {
  let [low, high, x] = [0, widest * 1.001, Math.min(start, widest)];
  for (let round = 0; round < 60; round++) {
    const { inside, density } = sumAt(weights, step, x);
    if (inside < p) low = x;
    else high = x;
    const next = x - (inside - p) / density;
    const to = next > low && next < high ? next : (low + high) / 2;
    if (Math.abs(to - x) < 1e-9 * widest) return to;
    x = to;
  }
  return x;
}

/** The sum of sines and its slope, turning by one angle from term to term. */
function sumAt(weights: Float64Array, step: number, x: number) {
  const [turnC, turnS] = [Math.cos(step * x), Math.sin(step * x)];
  let [c, s] = [Math.cos((step * x) / 2), Math.sin((step * x) / 2)];
  let [inside, slope] = [0, 0];
  for (let k = 0; k < weights.length; k++) {
    const weight = weights[k] as number;
    inside += weight * s;
    slope += weight * (k + 0.5) * c;
    const next = c * turnC - s * turnS;
    s = s * turnC + c * turnS;
    c = next;
  }
  return { inside, density: slope * step };
}

function partsOf(terms: readonly LinearTerm[]): Part[] {
  const kinds = Map.groupBy(
    terms.filter(({ u }) => u !== 0).entries(),
    ([index, { shape, nu, group }]) => {
      if (shape === 'rectangular') return `rectangular ${index}`;
      return shape === 'student' && Number.isFinite(nu) ? `student ${group}` : 'normal';
    },
  );
  return [...kinds.values()].map((members) => {
    const [[, first]] = members as [[number, LinearTerm]];
    const u = Math.hypot(...members.map(([, { u }]) => u));
    const shape = first.shape === 'student' && !Number.isFinite(first.nu) ? 'normal' : first.shape;
    return { shape, u, nu: first.nu };
  });
}

function characteristicOf({ shape, u, nu }: Part, t: number): number {
  const at = u * t;
  if (shape === 'normal') return Math.exp((-at * at) / 2);
  if (shape === 'student') return studentCharacteristic(nu, Math.sqrt(nu) * at);
  const angle = Math.sqrt(3) * at;
  return angle < 1e-4 ? 1 - (angle * angle) / 6 : Math.sin(angle) / angle;
}

function coverOfOne({ shape, nu }: Part, p: number): number {
  if (shape === 'rectangular') return Math.sqrt(3) * p;
  return coverageFactor(p, shape === 'student' ? nu : Number.POSITIVE_INFINITY);
}

/** Beyond this a source of u = 1 has hardly anything; Student's t thins out by a power, so there it is where little lies near. */
function reachOf({ shape, nu }: Part): number {
  if (shape === 'rectangular') return Math.sqrt(3);
  if (shape === 'normal') return 5.5;
  const width = 4 * coverageFactor(0.95, nu);
  let y = 5.5;
  // The density is at most 0.4·(1 + y²/ν)^(−(ν + 1)/2).
  while (width * 0.4 * (1 + (y * y) / nu) ** (-(nu + 1) / 2) > 1e-6) y *= 1.2;
  return y;
}
