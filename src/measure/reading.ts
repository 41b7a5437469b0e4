import type { Standing } from '../ledger/standing.ts';
import type { Instrument, Reading, Spec } from '../model/kinds.ts';
import type { Day } from '../time/day.ts';
import { type Quantity, showNumber } from '../units/quantity.ts';
import { convertInterval, convertUnit } from '../units/unit.ts';
import { SpreadLater } from './spread-later.ts';
import { mean, standardDeviation } from './statistics.ts';
import type { Component } from './uncertain.ts';
import type { SpecState, ValueOnDay } from './value-on-day.ts';

/** A reading worked out: its mean in the spec's unit, what is known of its uncertainty, and how. */
export interface Measured extends ValueOnDay {
  readonly kind: 'read';
  readonly reading: Reading & Standing;
  /** Standard deviation of the repeats that count; undefined for fewer than two. */
  readonly s: number | undefined;
  /** How many repeats count; excluded ones stay visible and do not. */
  readonly n: number;
}

/** Works out one reading by GUM: type A from the repeats, type B from what the instrument states. */
export function measure(
  reading: Reading,
  spec: Spec,
  instrument: Instrument | undefined,
): Measured {
  const excluded = new Set(reading.excluded ?? []);
  const positions = reading.values.map((_, index) => index + 1).filter((k) => !excluded.has(k));
  const counted = positions.flatMap((k) => reading.values[k - 1] ?? []);
  const values = counted.map(({ value }) => convertUnit(value, reading.unit, spec.unit));
  const value = mean(values);
  const s = values.length > 1 ? standardDeviation(values) : undefined;
  const readDecimals = Math.max(...counted.map(({ decimals }) => decimals));
  return new ReadValue({
    reading,
    unit: spec.unit,
    value,
    s,
    n: values.length,
    decimals: readDecimals + (reading.unit === spec.unit ? 0 : 1),
    sources: () => [
      ...repeatParts(reading, values, positions),
      ...(instrument ? instrumentParts(reading, instrument, value, spec.unit) : []),
    ],
  });
}

/** A reading whose uncertainty is worked out when somebody asks. */
class ReadValue extends SpreadLater implements Measured {
  readonly kind = 'read';
  readonly id: string;
  readonly date: Day;
  readonly state: SpecState;
  readonly reading: Reading & Standing;
  readonly unit: string;
  readonly value: number;
  readonly s: number | undefined;
  readonly n: number;
  readonly decimals: number;
  #sources: () => readonly Component[];

  constructor({ reading, unit, value, s, n, decimals, sources }: ReadingFacts) {
    super();
    this.id = reading.id;
    this.date = reading.date;
    this.state = reading.state;
    this.reading = reading;
    this.unit = unit;
    this.value = value;
    this.s = s;
    this.n = n;
    this.decimals = decimals;
    this.#sources = sources;
  }

  protected workOutComponents(): readonly Component[] {
    return this.#sources();
  }
}

type ReadingFacts = Pick<Measured, 'reading' | 'unit' | 'value' | 's' | 'n' | 'decimals'> & {
  readonly sources: () => readonly Component[];
};

/**
 * Type A: standard deviation of the mean, GUM 4.2.3.
 * Readings taken together, value by value, keep their k-th deviations as shared sources, so that their covariance is the
 * Σ(x−x̄)(y−ȳ)/(n(n−1)) of GUM 5.2.3. `positions` says which of the written values count.
 */
function repeatParts(
  reading: Reading,
  values: readonly number[],
  positions: readonly number[],
): Component[] {
  if (values.length < 2) return [];
  const n = values.length;
  const s = standardDeviation(values);
  const how = `s/√n = ${brief(s)}/√${n}`;
  const part = { name: 'repeats', nu: n - 1, shape: 'student' as const, how };
  if (reading.together === undefined) {
    const key = `${reading.id} repeats`;
    return [{ ...part, key, group: key, u: s / Math.sqrt(n) }];
  }
  const centre = mean(values);
  return values.map((value, index) => ({
    ...part,
    key: `${reading.together} ${positions[index]}`,
    group: reading.together as string,
    u: (value - centre) / Math.sqrt(n * (n - 1)),
  }));
}

/**
 * Type B, GUM 4.3: a digital step δ gives δ/√12, a stated error ±a gives a/√3, a certificate U gives U/k.
 * The error of an instrument is shared by readings that name the same zero.
 */
function instrumentParts(
  reading: Reading,
  instrument: Instrument,
  at: number,
  unit: string,
): Component[] {
  const nu = Number.POSITIVE_INFINITY;
  const inUnit = (quantity: Quantity) => convertInterval(quantity.value, at, quantity.unit, unit);
  const own = (name: string) => ({
    name,
    nu,
    key: `${reading.id} ${name}`,
    group: `${reading.id} ${name}`,
  });
  const shared = (name: string) => {
    if (reading.zero === undefined) return own(name);
    const key = `${instrument.id} ${reading.zero} ${name}`;
    return { name, zero: reading.zero, nu, key, group: key };
  };

  const parts: Component[] = [];
  if (instrument.step) {
    const step = inUnit(instrument.step);
    parts.push({
      ...own('step'),
      shape: 'rectangular',
      u: step / Math.sqrt(12),
      how: `δ/√12 = ${brief(step)}/√12`,
    });
  }
  if (instrument.certificateU) {
    const certified = inUnit(instrument.certificateU);
    const k = Number(instrument.certificateK ?? '2');
    parts.push({
      ...shared('certificate'),
      shape: 'normal',
      u: certified / k,
      how: `U/k = ${brief(certified)}/${k}`,
    });
  } else if (instrument.statedError) {
    const error = inUnit(instrument.statedError);
    parts.push({
      ...shared('stated error'),
      shape: 'rectangular',
      u: error / Math.sqrt(3),
      how: `a/√3 = ${brief(error)}/√3`,
    });
  }
  return parts;
}

function brief(value: number): string {
  return showNumber(
    Number(value.toPrecision(4)),
    Math.max(0, 3 - Math.floor(Math.log10(Math.abs(value) || 1))),
    'en',
  ).replace(/\.?0+$/, '');
}
