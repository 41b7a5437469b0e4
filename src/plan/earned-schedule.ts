import { ratio } from './earned-value.ts';

/** What earned schedule is worked out from. */
export interface EarnedScheduleInputs {
  /** Planned value at the end of each period, running total; the plan lasts as many periods as there are. */
  readonly planned: readonly number[];
  readonly earned: number;
  /** Periods gone by. */
  readonly actualTime: number;
}

/** Schedule figures in time, not in value, so they still mean something at the end; undefined where a ratio means nothing. */
export interface EarnedSchedule {
  /** ES: when what is earned by now should have been. */
  readonly earnedTime: number;
  /** SV(t): ahead when positive. */
  readonly scheduleVariance: number;
  /** SPI(t) */
  readonly scheduleIndex: number | undefined;
  /** IEAC(t): how long all will take if it goes on as so far. */
  readonly estimateAtCompletion: number | undefined;
  /** TSPI: the index the rest needs to end on time. */
  readonly toCompleteIndex: number | undefined;
}

/** Earned schedule (Lipke, 2003): where on the planned curve the earned value lies, straight between period ends. */
export function earnedSchedule({
  planned,
  earned,
  actualTime,
}: EarnedScheduleInputs): EarnedSchedule {
  const duration = planned.length;
  const earnedTime = timeOf(planned, earned);
  const scheduleIndex = ratio(earnedTime, actualTime);
  return {
    earnedTime,
    scheduleVariance: earnedTime - actualTime,
    scheduleIndex,
    estimateAtCompletion: scheduleIndex === undefined ? undefined : ratio(duration, scheduleIndex),
    toCompleteIndex: ratio(duration - earnedTime, duration - actualTime),
  };
}

function timeOf(planned: readonly number[], earned: number): number {
  if (earned <= 0) return 0;
  const whole = planned.filter((value) => value <= earned).length;
  const next = planned[whole];
  if (next === undefined) return planned.length;
  const before = planned[whole - 1] ?? 0;
  return whole + (earned - before) / (next - before);
}
