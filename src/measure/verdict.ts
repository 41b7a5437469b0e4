import type { Spec } from '../model/kinds.ts';
import type { Quantity } from '../units/quantity.ts';
import { convertInterval, convertUnit, isTurned, toBaseUnit } from '../units/unit.ts';
import type { Interval } from './value-on-day.ts';

/** Bounds of a spec in its own unit; either side may be open. */
export interface Limits {
  readonly lower: number | undefined;
  readonly upper: number | undefined;
}

/**
 * The limits of a spec for the length it was read over; undefined when it has none.
 * A limit `per` a length shrinks or grows with the length `over` which the readings were taken.
 */
export function limitsOf(spec: Spec): Limits | undefined {
  const limits = ownLimits(spec);
  if (limits === undefined || !spec.per || !spec.over) return limits;
  const factor =
    toBaseUnit(spec.over.value, spec.over.unit) / toBaseUnit(spec.per.value, spec.per.unit);
  const scaled = (limit: number | undefined) => (limit === undefined ? undefined : limit * factor);
  return { lower: scaled(limits.lower), upper: scaled(limits.upper) };
}

/** `min`/`max`, or `nominal` ± `tolerance`, in the spec's unit. */
function ownLimits(spec: Spec): Limits | undefined {
  const at = (quantity: Quantity | undefined) =>
    quantity && convertUnit(quantity.value, quantity.unit, spec.unit);
  const nominal = at(spec.nominal);
  if (nominal !== undefined && spec.tolerance) {
    // A tolerance on a temperature is written in kelvin; only its width counts.
    const { value, unit } = spec.tolerance;
    const width = convertInterval(value, nominal, unit, spec.unit);
    return { lower: nominal - width, upper: nominal + width };
  }
  // A least of 30 miles to the gallon is a most of 9.4 litres to 100 km.
  const turned = [spec.min, spec.max].some((bound) => bound && isTurned(bound.unit, spec.unit));
  const [lower, upper] = turned ? [spec.max, spec.min] : [spec.min, spec.max];
  const limits = { lower: at(lower), upper: at(upper) };
  return limits.lower === undefined && limits.upper === undefined ? undefined : limits;
}

export type Verdict = 'meets' | 'does not meet' | 'undecided';

/** Whether a value meets its limits with its expanded uncertainty counted: `judgeInterval` of value ± U. */
export function judge(value: number, U: number, limits: Limits): Verdict {
  return judgeInterval({ low: value - U, high: value + U }, limits);
}

/**
 * Whether a 95 % interval meets limits, after the idea of ISO 14253-1: it meets when all of it lies within
 * (at the bound it meets), it does not when all of it lies outside, and else nothing is decided.
 */
export function judgeInterval({ low, high }: Interval, { lower, upper }: Limits): Verdict {
  const slack = 1e-12 * Math.max(...[low, high, lower ?? 0, upper ?? 0].map(Math.abs));
  const inside =
    (lower === undefined || low >= lower - slack) && (upper === undefined || high <= upper + slack);
  if (inside) return 'meets';
  const outside =
    (lower !== undefined && high < lower - slack) || (upper !== undefined && low > upper + slack);
  return outside ? 'does not meet' : 'undecided';
}
