import { oncePer } from '../book/once.ts';
import type { View } from '../book/types.ts';
import { type CriticalPath, criticalPaths } from './critical-path.ts';
import { dayNumber } from './day-number.ts';
import { hoursLeft, meanPace } from './hours-left.ts';
import { type Activity, solveNetwork } from './network.ts';
import { forecastOn } from './project-forecast.ts';
import { linksOf, planOn } from './project-plan.ts';

/** Float of each phase in days, and a chain in which there is none. */
export interface Floats {
  readonly days: ReadonlyMap<string, number>;
  /** The longest of the chains that decide the finish. */
  readonly path: CriticalPath | undefined;
}

/** A wait that stands for the planned start of the phase itself. */
export const PLANNED_START = 'planned start';

/**
 * The plan as it was written: how many days a phase may end late before the last planned day moves. No phase starts before its
 * planned day; planned days that break a link are taken as the link has them.
 */
export const plannedFloats: (view: View) => Floats | undefined = oncePer(({ project }) => {
  const starts = project.phases.map(({ plannedStart }) => dayNumber(plannedStart));
  const first = Math.min(...starts);
  return floatsOf(
    project.phases.map((phase, index) => {
      const start = starts[index] ?? first;
      return {
        id: phase.id,
        duration: dayNumber(phase.plannedFinish) + 1 - start,
        after: linksOf(phase),
        waits: [{ id: PLANNED_START, until: start - first }],
      };
    }),
  );
});

/**
 * What is left, from the day of the view on: how many days an open phase may end late before the finish moves, if each had all the
 * time there is. Days away are not taken out. Undefined while there is no forecast.
 */
export const floatsNow: (view: View) => Floats | undefined = oncePer((view) => {
  const forecast = forecastOn(view);
  if (forecast.kind !== 'forecast') return undefined;
  const plan = planOn(view);
  const perDay = meanPace(plan.pace) / 7;
  const left = new Map(hoursLeft(plan, forecast).map((phase) => [phase.id, phase.left / perDay]));
  const finished = new Map(plan.phases.map(({ id, finished }) => [id, finished]));
  return floatsOf(
    plan.phases.flatMap(({ id, state, after }) => {
      const duration = left.get(id);
      if (duration === undefined) return [];
      const links = state === 'under way' ? [] : after;
      const over = links.flatMap((link) => {
        const day = finished.get(link.id);
        return day === undefined ? [] : { id: link.id, until: day - forecast.asOf + link.lag };
      });
      const held = plan.waits
        .filter(({ phases }) => phases.includes(id))
        .map((wait) => ({ id: wait.id, until: wait.to - forecast.asOf - 1 }));
      return { id, duration, after: links, waits: [...over, ...held] };
    }),
  );
});

function floatsOf(activities: readonly Activity[]): Floats | undefined {
  const network = solveNetwork(activities);
  if (network.kind === 'loop') return undefined;
  const paths = criticalPaths(activities, network);
  return {
    days: new Map(network.rows.map(({ id, totalFloat }) => [id, totalFloat])),
    path: paths.toSorted((one, other) => other.ids.length - one.ids.length)[0],
  };
}
