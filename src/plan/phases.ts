import type { Figure } from '../book/figure.ts';
import { sumHours, type WorkedRow } from '../hours/hours.ts';
import type { Phase } from '../model/kinds.ts';
import { type Day, daysBetween } from '../time/day.ts';
import type { Minutes } from '../time/duration.ts';

/** How far a phase is on a day, planned and actual side by side. */
export interface PhaseFigures {
  readonly phase: Phase;
  readonly state: 'not started' | 'under way' | 'finished';
  /** First and last day worked on it so far; undefined before the first. */
  readonly start: Day | undefined;
  readonly last: Day | undefined;
  readonly finished: Day | undefined;
  readonly hours: Figure<Minutes, WorkedRow>;
  /** Actual minus planned minutes; negative while there are hours in hand. */
  readonly over: Minutes;
  /** Days finished after the planned finish (before it: negative); for an open phase days past it, if any. */
  readonly late: number | undefined;
}

/** Works out a phase from the hours rows up to a day. */
export function phaseFigures(phase: Phase, hours: readonly WorkedRow[], day: Day): PhaseFigures {
  const worked = hours.filter((row) => row.phase === phase.id && row.date <= day);
  const finished =
    phase.finished !== undefined && phase.finished <= day ? phase.finished : undefined;
  const figure = sumHours(worked);
  return {
    phase,
    state: stateOf(worked.length, finished),
    start: worked[0]?.date,
    last: worked.at(-1)?.date,
    finished,
    hours: figure,
    over: figure.value - phase.plannedHours,
    late: daysLate(phase, finished, day),
  };
}

/** Hours worked for each hour planned; undefined for a phase that goes on, or that no hours were planned for. */
export function hoursRatio({ phase, finished, hours }: PhaseFigures): number | undefined {
  return finished && phase.plannedHours > 0 ? hours.value / phase.plannedHours : undefined;
}

function stateOf(rows: number, finished: Day | undefined): PhaseFigures['state'] {
  if (finished !== undefined) return 'finished';
  return rows > 0 ? 'under way' : 'not started';
}

function daysLate(phase: Phase, finished: Day | undefined, day: Day): number | undefined {
  if (finished !== undefined) return daysBetween(phase.plannedFinish, finished);
  return day > phase.plannedFinish ? daysBetween(phase.plannedFinish, day) : undefined;
}
