import type { Spec } from '../model/kinds.ts';
import type { Quantity } from '../units/quantity.ts';
import { convertInterval, convertUnit, isTurned } from '../units/unit.ts';

/** Bounds of a spec in its own unit; either side may be open. */
export interface Limits {
  readonly lower: number | undefined;
  readonly upper: number | undefined;
}

/** The limits of a spec: `min`/`max`, or `nominal` ± `tolerance`; undefined when it has none. */
export function limitsOf(spec: Spec): Limits | undefined {
  const at = (quantity: Quantity | undefined) =>
    quantity && convertUnit(quantity.value, quantity.unit, spec.unit);
  const nominal = at(spec.nominal);
  if (nominal !== undefined && spec.tolerance) {
    // A tolerance on a temperature is written in kelvin, which is as wide as a degree Celsius.
    const unit = spec.tolerance.unit === 'K' ? '°C' : spec.tolerance.unit;
    const width = convertInterval(spec.tolerance.value, nominal, unit, spec.unit);
    return { lower: nominal - width, upper: nominal + width };
  }
  // A least of 30 miles to the gallon is a most of 9.4 litres to 100 km.
  const turned = [spec.min, spec.max].some((bound) => bound && isTurned(bound.unit, spec.unit));
  const [lower, upper] = turned ? [spec.max, spec.min] : [spec.min, spec.max];
  const limits = { lower: at(lower), upper: at(upper) };
  return limits.lower === undefined && limits.upper === undefined ? undefined : limits;
}

export type Verdict = 'meets' | 'does not meet' | 'undecided';

/**
 * Whether a value meets its limits with its expanded uncertainty counted, after the idea of ISO 14253-1:
 * it meets when the whole interval lies within (at the bound it meets), it does not when the whole interval lies outside.
 */
export function judge(value: number, U: number, { lower, upper }: Limits): Verdict {
  const slack = 1e-12 * Math.max(Math.abs(value), U, Math.abs(lower ?? 0), Math.abs(upper ?? 0));
  const inside =
    (lower === undefined || value - U >= lower - slack) &&
    (upper === undefined || value + U <= upper + slack);
  if (inside) return 'meets';
  const outside =
    (lower !== undefined && value + U < lower - slack) ||
    (upper !== undefined && value - U > upper + slack);
  return outside ? 'does not meet' : 'undecided';
}
