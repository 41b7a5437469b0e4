import type { DayRange, WorkingCalendar } from './calendar.ts';
import type { DayNumber } from './day-number.ts';

/** A phase as it was planned, and how far it is. */
export interface Budgeted extends DayRange {
  /** Planned minutes. */
  readonly budget: number;
  readonly state: 'finished' | 'under way' | 'not started';
}

/**
 * Planned value: minutes that should be worked by the end of a day, each phase spread over the working time between its planned
 * days; where the calendar has none there, over the days.
 */
export function plannedBy(
  day: DayNumber,
  phases: readonly Budgeted[],
  calendar: WorkingCalendar,
): number {
  return phases.reduce((sum, { from, to, budget }) => {
    if (day < from) return sum;
    if (day >= to) return sum + budget;
    const time = calendar.minutesBetween(from, to + 1);
    const gone = calendar.minutesBetween(from, day + 1);
    return sum + budget * (time > 0 ? gone / time : (day + 1 - from) / (to + 1 - from));
  }, 0);
}

/** Earned value by the fixed 50/50 rule: half of a phase's budget when it is begun, the rest when it is finished. */
export function earnedSoFar(phases: readonly Budgeted[]): number {
  const shares = { finished: 1, 'under way': 0.5, 'not started': 0 } as const;
  return phases.reduce((sum, { budget, state }) => sum + budget * shares[state], 0);
}

/** Planned value at the end of each period from the first planned day to the last, for earned schedule. */
export function plannedCurve(
  phases: readonly Budgeted[],
  periodDays: number,
  calendar: WorkingCalendar,
): number[] {
  if (phases.length === 0) return [];
  const first = phases.reduce((least, { from }) => Math.min(least, from), Number.POSITIVE_INFINITY);
  const last = phases.reduce((most, { to }) => Math.max(most, to), first);
  return Array.from({ length: Math.ceil((last + 1 - first) / periodDays) }, (_, index) =>
    plannedBy(first + (index + 1) * periodDays - 1, phases, calendar),
  );
}
