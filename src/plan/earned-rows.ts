import { showDuration } from '../time/duration.ts';
import type { ProjectEarned } from './project-earned.ts';

/** A standard figure: what it is called, what it is, and how it came about. */
export interface EarnedRow {
  readonly short: string;
  readonly name: string;
  readonly means: string;
  /** Undefined where a ratio has no meaning; `how` then says why. */
  readonly value: string | undefined;
  readonly how: string;
}

/** The usual figures of earned value, by the names of ANSI/PMI 19-006, and of earned schedule, by Lipke's. */
export function earnedRows(earned: ProjectEarned): EarnedRow[] {
  return [...sums(earned), ...costRows(earned), ...scheduleRows(earned)];
}

const hours = (minutes: number) => `${showDuration(Math.round(minutes))} h`;
const maybeHours = (minutes: number | undefined) =>
  minutes === undefined ? undefined : hours(minutes);
const index = (ratio: number | undefined) => ratio?.toFixed(2);
const weeks = (count: number) => `${count.toFixed(1).replace('-', '−')} weeks`;

function row(short: string, name: string, rest: Omit<EarnedRow, 'short' | 'name'>): EarnedRow {
  return { short, name, ...rest };
}

function sums({ budget, planned, earned, actual }: ProjectEarned): EarnedRow[] {
  return [
    row('BAC', 'Budget at completion', {
      means: 'all that was planned',
      value: hours(budget),
      how: 'sum of the planned hours of all phases',
    }),
    row('PV', 'Planned value', {
      means: 'what should be done by now, at its planned hours',
      value: hours(planned),
      how: 'each phase spread over the working time between its planned days',
    }),
    row('EV', 'Earned value', {
      means: 'what is done by now, at its planned hours',
      value: hours(earned),
      how: '50/50 rule: half of the planned hours when a phase is begun, the rest when it is finished',
    }),
    row('AC', 'Actual cost', {
      means: 'hours worked on it',
      value: hours(actual),
      how: 'sum of the hours rows',
    }),
  ];
}

function costRows(all: ProjectEarned): EarnedRow[] {
  const { budget, planned, earned, actual } = all;
  const noIndex = 'nothing is earned or worked yet, so there is no CPI to go on';
  const atCompletion = all.estimateAtCompletion;
  return [
    row('CV', 'Cost variance', {
      means: 'hours in hand; negative when it took more',
      value: hours(all.costVariance),
      how: `EV − AC = ${hours(earned)} − ${hours(actual)}`,
    }),
    row('SV', 'Schedule variance', {
      means: 'hours ahead of the plan; negative when behind',
      value: hours(all.scheduleVariance),
      how: `EV − PV = ${hours(earned)} − ${hours(planned)}`,
    }),
    row('CPI', 'Cost performance index', {
      means: 'planned hours done for each hour worked',
      value: index(all.costIndex),
      how: actual > 0 ? `EV ÷ AC = ${hours(earned)} ÷ ${hours(actual)}` : 'nothing is worked yet',
    }),
    row('SPI', 'Schedule performance index', {
      means: 'share of what should be done that is done; 1 at the end, however late',
      value: index(all.scheduleIndex),
      how:
        planned > 0
          ? `EV ÷ PV = ${hours(earned)} ÷ ${hours(planned)}`
          : 'by the plan nothing had to be done yet',
    }),
    row('EAC', 'Estimate at completion', {
      means: 'hours in all, if it goes on as so far',
      value: maybeHours(atCompletion),
      how: atCompletion === undefined ? noIndex : `BAC ÷ CPI = ${hours(budget)} × AC ÷ EV`,
    }),
    row('ETC', 'Estimate to complete', {
      means: 'hours still to work, if it goes on as so far',
      value: maybeHours(all.estimateToComplete),
      how:
        atCompletion === undefined
          ? noIndex
          : `EAC − AC = ${hours(atCompletion)} − ${hours(actual)}`,
    }),
    row('VAC', 'Variance at completion', {
      means: 'hours in hand at the end; negative when over',
      value: maybeHours(all.varianceAtCompletion),
      how:
        atCompletion === undefined
          ? noIndex
          : `BAC − EAC = ${hours(budget)} − ${hours(atCompletion)}`,
    }),
    row('TCPI', 'To-complete performance index', {
      means: 'the CPI that the rest needs to end on budget',
      value: index(all.toCompleteIndex),
      how:
        budget > actual
          ? `(BAC − EV) ÷ (BAC − AC) = ${hours(budget - earned)} ÷ ${hours(budget - actual)}`
          : 'the budget is used up, so no index could keep it',
    }),
  ];
}

function scheduleRows({ schedule, weeks: gone, plannedWeeks }: ProjectEarned): EarnedRow[] {
  const { earnedTime, scheduleIndex, estimateAtCompletion } = schedule;
  const begun = scheduleIndex !== undefined;
  return [
    row('ES', 'Earned schedule', {
      means: 'how far into the plan what is done should have been done',
      value: weeks(earnedTime),
      how: 'where EV lies on the curve of PV, straight between ends of weeks',
    }),
    row('SV(t)', 'Schedule variance in time', {
      means: 'ahead of the plan; negative when behind',
      value: weeks(schedule.scheduleVariance),
      how: `ES − time gone = ${weeks(earnedTime)} − ${weeks(gone)}`,
    }),
    row('SPI(t)', 'Schedule performance index in time', {
      means: 'weeks of plan done for each week gone',
      value: index(scheduleIndex),
      how: begun
        ? `ES ÷ time gone = ${weeks(earnedTime)} ÷ ${weeks(gone)}`
        : 'the plan has not begun',
    }),
    row('IEAC(t)', 'Estimate at completion in time', {
      means: 'how long it all takes, if it goes on as so far',
      value: estimateAtCompletion === undefined ? undefined : weeks(estimateAtCompletion),
      how:
        estimateAtCompletion === undefined
          ? 'nothing is earned yet, so there is no SPI(t) to go on'
          : `planned time ÷ SPI(t) = ${weeks(plannedWeeks)} ÷ ${index(scheduleIndex)}`,
    }),
  ];
}
