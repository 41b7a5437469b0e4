import { oncePer } from '../book/once.ts';
import type { View } from '../book/types.ts';
import type { Phase } from '../model/kinds.ts';
import { dayNumber } from './day-number.ts';
import type { ForecastInputs, ForecastPhase, ForecastWait } from './forecast-types.ts';
import { endOf, type Hold, holdsOn } from './holds.ts';
import { calendarOn, type OwnCalendar, WEEKS } from './own-calendar.ts';
import { hoursPace, type PaceWeek } from './pace.ts';
import type { PhaseFigures } from './phases.ts';
import type { ThreePoint } from './three-point.ts';

/** All that a plan is worked out from on a day: how far phases are, what holds them, when there is time, how fast it goes. */
export interface ProjectPlan extends OwnCalendar {
  readonly phases: readonly ForecastPhase[];
  readonly holds: readonly Hold[];
  /** Holds whose end was said; of the others nobody knows it. */
  readonly waits: readonly ForecastWait[];
  readonly pace: readonly PaceWeek[];
}

// Enough that the shown days move by a day or two with another seed. The same for all days, so that a newer row changes none.
const DRAWS = 2000;
const SEED = 1;

/** The plan of a project as it stood on the day of a view; worked out once. */
export const planOn: (view: View) => ProjectPlan = oncePer((view) => {
  const own = calendarOn(view);
  const holds = holdsOn(view);
  const worked = view.hours.map((row) => ({ day: dayNumber(row.date), minutes: row.hours }));
  return {
    ...own,
    holds,
    phases: view.phases.map(asForecast),
    waits: holds.flatMap((hold) => {
      const end = endOf(hold, view.day);
      if (end === undefined) return [];
      return { id: hold.id, phases: hold.phases, from: dayNumber(end), to: dayNumber(end) };
    }),
    pace: hoursPace(worked, { asOf: dayNumber(view.day), weeks: WEEKS, calendar: own.calendar }),
  };
});

/** What the forecast of a view's day is made from. */
export function forecastInputs(view: View): ForecastInputs {
  const { phases, waits, pace, calendar } = planOn(view);
  return {
    ...{ phases, waits, calendar, asOf: dayNumber(view.day), seed: SEED, draws: DRAWS },
    pace: pace.map(({ minutes }) => minutes),
  };
}

function asForecast({ phase, state, finished, hours }: PhaseFigures): ForecastPhase {
  return {
    id: phase.id,
    planned: plannedMinutes(phase),
    spent: hours.value,
    state,
    ...(finished === undefined ? {} : { finished: dayNumber(finished) }),
    after: linksOf(phase),
  };
}

/** Planned minutes of a phase, one number or three. */
export function plannedMinutes(phase: Phase): number | ThreePoint {
  const { plannedHours: likely, plannedHoursLeast: least, plannedHoursMost: most } = phase;
  if (least === undefined && most === undefined) return likely;
  return { least: least ?? likely, likely, most: most ?? likely };
}

/** The links into a phase, their lags in days. */
export function linksOf({ after = [] }: Phase): ForecastPhase['after'] {
  return after.map(({ id, days }) => ({ id, lag: days }));
}
