import { LEAST_LEFT, meanOf } from './forecast-draws.ts';
import type { Forecast } from './forecast-types.ts';
import { typicalRatio } from './habit.ts';
import type { PaceWeek } from './pace.ts';
import type { ProjectPlan } from './project-plan.ts';

/** What is left of a phase by the builder's own ratio. */
export interface PhaseLeft {
  readonly id: string;
  /** Minutes planned; of three numbers their mean. */
  readonly planned: number;
  readonly spent: number;
  /** Minutes. */
  readonly left: number;
}

/** Minutes left of each open phase: planned × typical ratio − worked; as in the draws, a tenth of the plan at least. */
export function hoursLeft({ phases }: ProjectPlan, { ratios }: Forecast): PhaseLeft[] {
  const typical = typicalRatio(ratios.map(({ ratio }) => ratio));
  return phases
    .filter(({ state }) => state !== 'finished')
    .map(({ id, planned, spent }) => {
      const minutes = meanOf(planned);
      const left = Math.max(minutes * typical - spent, LEAST_LEFT * minutes);
      return { id, planned: minutes, spent, left };
    });
}

/** Minutes of an average week of the pace. */
export function meanPace(pace: readonly PaceWeek[]): number {
  return pace.reduce((sum, { minutes }) => sum + minutes, 0) / pace.length;
}
