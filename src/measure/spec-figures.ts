import type { Spec } from '../model/kinds.ts';
import type { Day } from '../time/day.ts';
import { convertUnit } from '../units/unit.ts';
import { mergeComponents, type Spread, scaleComponents, spreadOf } from './uncertain.ts';
import { intervalOf, type SpecState } from './value-on-day.ts';
import { judgeInterval, type Limits, limitsOf, type Verdict } from './verdict.ts';
import type { SpecValue } from './worked.ts';

/** The difference between two values of a spec. */
export interface Change extends Spread {
  readonly before: SpecValue;
  readonly after: SpecValue;
  readonly value: number;
  /** Whether the difference exceeds its own U; undefined where U is not known. */
  readonly changed: boolean | undefined;
}

/** How a spec stands to what the rebuild aims at. */
export type Reached = 'reached' | 'not reached' | 'undecided';

/** All that is known of a spec on a day. */
export interface SpecFigures {
  readonly spec: Spec;
  /** Values in order of date. */
  readonly history: readonly SpecValue[];
  readonly latest: SpecValue | undefined;
  readonly asFound: SpecValue | undefined;
  readonly before: SpecValue | undefined;
  readonly after: SpecValue | undefined;
  readonly change: Change | undefined;
  readonly limits: Limits | undefined;
  readonly verdict: Verdict | undefined;
  readonly target: number | undefined;
  readonly reached: Reached | undefined;
}

/** Picks latest, before and after from the values of a spec up to a day (all of them where no day is given). */
export function specFigures(spec: Spec, values: readonly SpecValue[], day?: Day): SpecFigures {
  const history = day === undefined ? values : values.filter(({ date }) => date <= day);
  const last = (...states: readonly SpecState[]) =>
    history.findLast(({ state }) => states.includes(state));
  const latest = history.at(-1);
  const asFound = history.find(({ state }) => state === 'as-found');
  const after = last('after', 'final');
  // "Before" is what was read last before the work: it must be older than the one after it.
  const older = after === undefined ? history : history.slice(0, history.indexOf(after));
  const before =
    older.findLast(({ state }) => state === 'before') ??
    older.findLast(({ state }) => state === 'as-found');
  const limits = limitsOf(spec);
  const interval = latest && intervalOf(latest);
  const target = spec.target && convertUnit(spec.target.value, spec.target.unit, spec.unit);
  return {
    spec,
    history,
    latest,
    asFound,
    before,
    after,
    change: before && after && changeBetween(before, after),
    limits,
    verdict: limits && interval && judgeInterval(interval, limits),
    target,
    reached:
      target === undefined || interval === undefined
        ? undefined
        : reachedBy(interval, target, aimOf(spec, target, asFound)),
  };
}

/** After minus before. What both share (one instrument at one zero, say) cancels; nothing is said of U where one side knows none. */
export function changeBetween(before: SpecValue, after: SpecValue): Change {
  const value = after.value - before.value;
  if (before.u === undefined || after.u === undefined) {
    return {
      before,
      after,
      value,
      u: undefined,
      nu: Number.POSITIVE_INFINITY,
      U: undefined,
      changed: undefined,
    };
  }
  const components = mergeComponents([
    ...after.components,
    ...scaleComponents(before.components, -1),
  ]);
  const spread = spreadOf(components);
  return { before, after, value, ...spread, changed: Math.abs(value) > (spread.U ?? 0) };
}

/** Which way a target is aimed at: as the spec says, else away from what was found. */
function aimOf(
  spec: Spec,
  target: number,
  asFound: SpecValue | undefined,
): 'lower' | 'higher' | 'nominal' {
  if (spec.better !== undefined) return spec.better;
  if (asFound === undefined) return 'nominal';
  return target < asFound.value ? 'lower' : 'higher';
}

/** A one-sided target is judged like a limit; a nominal one is reached where the interval holds it. */
function reachedBy(
  interval: { low: number; high: number },
  target: number,
  aim: 'lower' | 'higher' | 'nominal',
): Reached {
  if (aim === 'nominal')
    return interval.low <= target && target <= interval.high ? 'reached' : 'not reached';
  const verdict = judgeInterval(
    interval,
    aim === 'lower' ? { lower: undefined, upper: target } : { lower: target, upper: undefined },
  );
  const words = {
    meets: 'reached',
    'does not meet': 'not reached',
    undecided: 'undecided',
  } as const;
  return words[verdict];
}
