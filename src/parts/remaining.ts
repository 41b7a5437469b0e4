import type { Project } from '../book/types.ts';
import { standsOn } from '../ledger/standing.ts';
import type { Measured } from '../measure/reading.ts';
import {
  type Component,
  mergeComponents,
  scaleComponents,
  spreadOf,
} from '../measure/uncertain.ts';
import type { Interval } from '../measure/value-on-day.ts';
import type { SpecValue } from '../measure/worked.ts';
import type { Spec } from '../model/kinds.ts';
import type { Day } from '../time/day.ts';
import type { Quantity } from '../units/quantity.ts';
import { convertUnit } from '../units/unit.ts';

/** Thickness left at one place, in per cent of the nominal of its spec. */
export interface Remaining {
  readonly kind: 'worked';
  readonly unit: '%';
  readonly value: number;
  readonly components: readonly Component[];
  readonly u: number | undefined;
  readonly nu: number;
  readonly U: number | undefined;
  readonly decimals: number;
  /** What it was worked out from. */
  readonly reading: Measured;
  readonly nominal: Quantity;
}

/**
 * A reading of thickness as a share of its spec's nominal: 100 % · t / nominal, the counterpart of the calculation sheet-loss.
 * The nominal is taken as exact, as a sheet's name is. Undefined where the spec has no nominal above zero.
 */
export function remainingOf(reading: Measured, spec: Spec): Remaining | undefined {
  const { nominal } = spec;
  const whole = nominal && convertUnit(nominal.value, nominal.unit, spec.unit);
  if (nominal === undefined || whole === undefined || whole <= 0) return undefined;
  const components = scaleComponents(reading.components, 100 / whole);
  return {
    kind: 'worked',
    unit: '%',
    value: (100 * reading.value) / whole,
    components,
    ...spreadOf(components),
    decimals: 0,
    reading,
    nominal,
  };
}

/** The reading that counts on a day under an id that was named once: itself, or what replaced it by then. */
export function readingOn(project: Project, id: string, day: Day): Measured | undefined {
  let standing: string | undefined = id;
  // As many steps as there are corrections at the most, so that a loop (which the check refuses) ends too.
  for (const _ of project.corrections) {
    const gone = project.corrections.find(({ old, on }) => old === standing && on <= day);
    if (gone === undefined) break;
    standing = gone.by;
  }
  return project.readings.find(({ reading }) => reading.id === standing && standsOn(reading, day));
}

/** The smallest of several, which decides for a part; the first of equals. */
export function leastOf(all: readonly Remaining[]): Remaining | undefined {
  return all.reduce<Remaining | undefined>(
    (least, item) => (least === undefined || item.value < least.value ? item : least),
    undefined,
  );
}

/** A difference of two shares of thickness, in percentage points. */
export interface RemainingChange {
  readonly value: number;
  readonly U: number | undefined;
  /** Whether it exceeds its own U; undefined where U is not known. */
  readonly changed: boolean | undefined;
}

/** Later minus earlier; a zero or a certificate that both share cancels as far as it is shared. */
export function changeOfRemaining(before: Remaining, after: Remaining): RemainingChange {
  const value = after.value - before.value;
  if (before.u === undefined || after.u === undefined)
    return { value, U: undefined, changed: undefined };
  const { U } = spreadOf(
    mergeComponents([...after.components, ...scaleComponents(before.components, -1)]),
  );
  return { value, U, changed: Math.abs(value) > (U ?? 0) };
}

/** The 95 % interval, undefined where nothing is known of the uncertainty. */
export function remainingInterval({ value, U }: Remaining): Interval | undefined {
  return U === undefined ? undefined : { low: value - U, high: value + U };
}

/** Spec and id of the value that a share of thickness is, or was worked out from. */
export function readAt(left: Remaining | SpecValue): readonly [spec: string, id: string] {
  if ('nominal' in left) return [left.reading.reading.spec, left.reading.id];
  return left.kind === 'read' ? [left.reading.spec, left.id] : [left.recipe.spec.id, left.id];
}
