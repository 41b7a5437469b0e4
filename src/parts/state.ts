import type { partStates } from '../model/components.ts';
import type { Part } from '../model/kinds.ts';
import type { Day } from '../time/day.ts';

export type PartState = (typeof partStates)[number];

/** Steps of a part's life, the furthest last, with the state each leads to. */
const STEPS = [
  ['wanted', 'wanted'],
  ['ordered', 'ordered'],
  ['got', 'in-hand'],
  ['fitted', 'fitted'],
  ['scrapped', 'scrapped'],
  ['sold', 'sold'],
] as const satisfies readonly (readonly [keyof Part, PartState])[];

/** The state of a part on a day: the furthest of its steps that has happened. */
export function stateOn(part: Part, day: Day): PartState {
  const reached = STEPS.findLast(([step]) => {
    const date = part[step];
    return date !== undefined && date <= day;
  });
  return reached?.[1] ?? 'noted';
}

/** The day of a part's latest step up to a day, or undefined. */
export function lastStepOn(part: Part, day: Day): Day | undefined {
  return STEPS.map(([step]) => part[step])
    .filter((date): date is Day => date !== undefined && date <= day)
    .sort()
    .at(-1);
}

/** Whether a part was known on a day: one of its steps has happened, or it has none and was there from the start. */
export function isKnownOn(part: Part, day: Day): boolean {
  const dates = STEPS.map(([step]) => part[step]).filter((date) => date !== undefined);
  return dates.length === 0 || dates.some((date) => date <= day);
}
