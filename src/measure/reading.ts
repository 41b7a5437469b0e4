import type { Instrument, Reading, Spec } from '../model/kinds.ts';
import { convertInterval, convertUnit } from '../units/unit.ts';
import { mean, standardDeviation } from './statistics.ts';
import {
  type Contribution,
  combine,
  type Estimate,
  effectiveFreedom,
  expanded,
} from './uncertainty.ts';

/** A reading worked out: its mean in the spec's unit, what is known of its uncertainty, and how. */
export interface Measured extends Estimate {
  readonly reading: Reading;
  readonly unit: string;
  /** Standard deviation of the repeats; undefined for fewer than two. */
  readonly s: number | undefined;
  readonly parts: readonly Contribution[];
  /** Expanded uncertainty at 95 %; undefined where nothing is known. */
  readonly U: number | undefined;
  /** Most decimals any raw value was read with, for showing a value without U. */
  readonly decimals: number;
}

/** Works out one reading by GUM: type A from the repeats, type B from what the instrument states. */
export function measure(
  reading: Reading,
  spec: Spec,
  instrument: Instrument | undefined,
): Measured {
  const raw = reading.values.map(({ value }) => value);
  const values = raw.map((value) => convertUnit(value, reading.unit, spec.unit));
  const value = mean(values);
  const s = values.length > 1 ? standardDeviation(values) : undefined;

  const repeats = s === undefined ? [] : [repeatPart(s, values.length)];
  const stated = instrument ? instrumentParts(instrument, value, spec.unit) : [];
  const parts = [...repeats, ...stated];
  const u = parts.length > 0 ? combine(parts) : undefined;
  const estimate = { value, u: u === 0 ? undefined : u, nu: effectiveFreedom(parts) };
  const sameUnit = reading.unit === spec.unit;
  const decimals = Math.max(...reading.values.map((item) => item.decimals)) + (sameUnit ? 0 : 1);
  return { ...estimate, reading, unit: spec.unit, s, parts, U: expanded(estimate), decimals };
}

/** Type A: standard deviation of the mean, GUM 4.2.3. */
function repeatPart(s: number, n: number): Contribution {
  return { name: 'repeats', u: s / Math.sqrt(n), nu: n - 1, how: `s/√n = ${brief(s)}/√${n}` };
}

/** Type B, GUM 4.3: a digital step δ gives δ/√12, a stated error ±a gives a/√3, a certificate U gives U/k. */
function instrumentParts(instrument: Instrument, at: number, unit: string): Contribution[] {
  const nu = Number.POSITIVE_INFINITY;
  const inUnit = (quantity: { value: number; unit: string }) =>
    convertInterval(quantity.value, at, quantity.unit, unit);
  const parts: Contribution[] = [];
  if (instrument.step) {
    const step = inUnit(instrument.step);
    parts.push({
      name: 'step of the scale',
      u: step / Math.sqrt(12),
      nu,
      how: `δ/√12 = ${brief(step)}/√12`,
    });
  }
  if (instrument.certificateU) {
    const certified = inUnit(instrument.certificateU);
    const k = Number(instrument.certificateK ?? '2');
    parts.push({
      name: 'certificate',
      u: certified / k,
      nu,
      how: `U/k = ${brief(certified)}/${k}`,
    });
  } else if (instrument.statedError) {
    const error = inUnit(instrument.statedError);
    parts.push({
      name: 'stated error',
      u: error / Math.sqrt(3),
      nu,
      how: `a/√3 = ${brief(error)}/√3`,
    });
  }
  return parts;
}

function brief(value: number): string {
  return String(Number(value.toPrecision(4)));
}
