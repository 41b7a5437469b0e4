import type { Spec } from '../model/kinds.ts';
import type { Day } from '../time/day.ts';
import type { Measured } from './reading.ts';
import { type Estimate, effectiveFreedom, expanded } from './uncertainty.ts';
import { judge, type Limits, limitsOf, type Verdict } from './verdict.ts';

/** The difference between two readings of a spec. */
export interface Change extends Estimate {
  readonly before: Measured;
  readonly after: Measured;
  readonly U: number | undefined;
  /** Whether the difference exceeds its own U; undefined where U is not known. */
  readonly changed: boolean | undefined;
}

/** All that is known of a spec on a day. */
export interface SpecFigures {
  readonly spec: Spec;
  /** Readings in order of date. */
  readonly history: readonly Measured[];
  readonly latest: Measured | undefined;
  readonly asFound: Measured | undefined;
  readonly before: Measured | undefined;
  readonly after: Measured | undefined;
  readonly change: Change | undefined;
  readonly limits: Limits | undefined;
  readonly verdict: Verdict | undefined;
}

/** Picks latest, before and after from the readings of a spec up to a day (all of them where no day is given). */
export function specFigures(spec: Spec, readings: readonly Measured[], day?: Day): SpecFigures {
  const history =
    day === undefined ? readings : readings.filter(({ reading }) => reading.date <= day);
  const last = (...states: readonly string[]) =>
    history.findLast(({ reading }) => states.includes(reading.state));
  const latest = history.at(-1);
  const after = last('after', 'final');
  // "Before" is what was read last before the work: the reading must be older than the one after it.
  const older = history.filter(
    (item) => after === undefined || history.indexOf(item) < history.indexOf(after),
  );
  const before =
    older.findLast(({ reading }) => reading.state === 'before') ??
    older.findLast(({ reading }) => reading.state === 'as-found');
  const limits = limitsOf(spec);
  const verdict =
    limits && latest?.U !== undefined ? judge(latest.value, latest.U, limits) : undefined;
  return {
    spec,
    history,
    latest,
    asFound: history.find(({ reading }) => reading.state === 'as-found'),
    before,
    after,
    change: before && after && changeBetween(before, after),
    limits,
    verdict,
  };
}

/** After minus before, the two taken as independent: u of the difference is the root of the sum of squares. */
export function changeBetween(before: Measured, after: Measured): Change {
  const value = after.value - before.value;
  if (before.u === undefined || after.u === undefined)
    return {
      before,
      after,
      value,
      u: undefined,
      nu: Number.POSITIVE_INFINITY,
      U: undefined,
      changed: undefined,
    };
  const u = Math.hypot(before.u, after.u);
  const nu = effectiveFreedom([before as Required<Estimate>, after as Required<Estimate>] as {
    u: number;
    nu: number;
  }[]);
  const U = expanded({ u, nu }) as number;
  return { before, after, value, u, nu, U, changed: Math.abs(value) > U };
}
