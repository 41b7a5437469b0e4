import { oncePer } from '../book/once.ts';
import type { View } from '../book/types.ts';
import { type DayNumber, dayNumber } from './day-number.ts';
import { type EarnedSchedule, earnedSchedule } from './earned-schedule.ts';
import { type EarnedValue, type EarnedValueInputs, earnedValue } from './earned-value.ts';
import type { PhaseFigures } from './phases.ts';
import { type Budgeted, earnedSoFar, plannedBy, plannedCurve } from './planned-value.ts';
import { planOn } from './project-plan.ts';

/** Planned, earned and actual minutes at the end of a day. */
export interface EarnedPoint {
  readonly day: DayNumber;
  readonly planned: number;
  /** Both undefined after the day of the view. */
  readonly earned: number | undefined;
  readonly actual: number | undefined;
}

/** Earned value of a project on a day; minutes, and weeks for schedule figures. */
export interface ProjectEarned extends EarnedValueInputs, EarnedValue {
  readonly schedule: EarnedSchedule;
  /** Weeks that the plan lasts, and weeks since it began. */
  readonly plannedWeeks: number;
  readonly weeks: number;
  /** A point a week, the day of the view among them. */
  readonly curve: readonly EarnedPoint[];
}

/** Earned value on the day of a view; undefined for a project without phases. */
export const earnedOn: (view: View) => ProjectEarned | undefined = oncePer((view) => {
  const { phases, project } = view;
  if (phases.length === 0) return undefined;
  const { calendar } = planOn(view);
  const asOf = dayNumber(view.day);
  const budgetedOn = (day: DayNumber) => phases.map((phase) => asBudgeted(phase, day));
  const budgeted = budgetedOn(asOf);
  const curve = plannedCurve(budgeted, 7, calendar);
  const first = Math.min(...budgeted.map(({ from }) => from));
  const inputs: EarnedValueInputs = {
    budget: project.phases.reduce((sum, { plannedHours }) => sum + plannedHours, 0),
    planned: plannedBy(asOf, budgeted, calendar),
    earned: earnedSoFar(budgeted),
    actual: view.hoursByPhase.total.value,
  };
  const weeks = Math.max(0, (asOf + 1 - first) / 7);
  const days = daysOfCurve({ first, asOf, last: first + 7 * curve.length - 1 });
  return {
    ...inputs,
    ...earnedValue(inputs),
    schedule: earnedSchedule({ planned: curve, earned: inputs.earned, actualTime: weeks }),
    plannedWeeks: curve.length,
    weeks,
    curve: days.map((day) => ({
      day,
      planned: plannedBy(day, budgeted, calendar),
      earned: day > asOf ? undefined : earnedSoFar(budgetedOn(day)),
      actual: day > asOf ? undefined : minutesUpTo(view, day),
    })),
  };
});

/** The day before the plan begins, the end of each of its weeks, and the day itself. */
function daysOfCurve({ first, asOf, last }: { first: number; asOf: number; last: number }) {
  const days = new Set([asOf]);
  for (let day = first - 1; day < Math.max(asOf, last) + 7; day += 7) days.add(day);
  return [...days].filter((day) => day <= Math.max(asOf, last)).sort((one, other) => one - other);
}

function asBudgeted(figures: PhaseFigures, day: DayNumber): Budgeted {
  const { plannedStart, plannedFinish, plannedHours } = figures.phase;
  return {
    from: dayNumber(plannedStart),
    to: dayNumber(plannedFinish),
    budget: plannedHours,
    state: stateBy(figures, day),
  };
}

function stateBy({ start, finished }: PhaseFigures, day: DayNumber): Budgeted['state'] {
  if (finished !== undefined && dayNumber(finished) <= day) return 'finished';
  return start !== undefined && dayNumber(start) <= day ? 'under way' : 'not started';
}

function minutesUpTo({ hours }: View, day: DayNumber): number {
  return hours.reduce(
    (sum, { date, hours: minutes }) => (dayNumber(date) <= day ? sum + minutes : sum),
    0,
  );
}
