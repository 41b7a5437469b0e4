import { showDuration } from '../time/duration.ts';
import type { EarnedName } from '../words/en/plan/earned.ts';
import type { Words } from '../words/words.ts';
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
export function earnedRows(figures: ProjectEarned, { plan: { earned } }: Words): EarnedRow[] {
  const { hows, names } = earned;
  const weeks = (count: number) => earned.weeks(count.toFixed(1).replace('-', '−'));
  return [
    ...sums(figures, hows),
    ...costRows(figures, hows),
    ...scheduleRows(figures, hows, weeks),
  ].map(({ short, ...rest }) => {
    const [name, means] = names[short];
    return { short, name, means, ...rest };
  });
}

type Hows = Words['plan']['earned']['hows'];
type Row = Omit<EarnedRow, 'name' | 'means'> & { readonly short: EarnedName };

const row = (short: EarnedName, rest: Pick<EarnedRow, 'value' | 'how'>): Row => ({
  short,
  ...rest,
});

const hours = (minutes: number) => `${showDuration(Math.round(minutes))} h`;
const maybeHours = (minutes: number | undefined) =>
  minutes === undefined ? undefined : hours(minutes);
const index = (ratio: number | undefined) => ratio?.toFixed(2);

function sums({ budget, planned, earned, actual }: ProjectEarned, hows: Hows): Row[] {
  return [
    row('BAC', {
      value: hours(budget),
      how: hows.BAC,
    }),
    row('PV', {
      value: hours(planned),
      how: hows.PV,
    }),
    row('EV', {
      value: hours(earned),
      how: hows.EV,
    }),
    row('AC', {
      value: hours(actual),
      how: hows.AC,
    }),
  ];
}

function costRows(all: ProjectEarned, hows: Hows): Row[] {
  const { budget, planned, earned, actual } = all;
  const noIndex = hows.noIndex;
  const atCompletion = all.estimateAtCompletion;
  return [
    row('CV', {
      value: hours(all.costVariance),
      how: `EV − AC = ${hours(earned)} − ${hours(actual)}`,
    }),
    row('SV', {
      value: hours(all.scheduleVariance),
      how: `EV − PV = ${hours(earned)} − ${hours(planned)}`,
    }),
    row('CPI', {
      value: index(all.costIndex),
      how: actual > 0 ? `EV ÷ AC = ${hours(earned)} ÷ ${hours(actual)}` : hows.noWork,
    }),
    row('SPI', {
      value: index(all.scheduleIndex),
      how: planned > 0 ? `EV ÷ PV = ${hours(earned)} ÷ ${hours(planned)}` : hows.noPlan,
    }),
    row('EAC', {
      value: maybeHours(atCompletion),
      how: atCompletion === undefined ? noIndex : `BAC ÷ CPI = ${hours(budget)} × AC ÷ EV`,
    }),
    row('ETC', {
      value: maybeHours(all.estimateToComplete),
      how:
        atCompletion === undefined
          ? noIndex
          : `EAC − AC = ${hours(atCompletion)} − ${hours(actual)}`,
    }),
    row('VAC', {
      value: maybeHours(all.varianceAtCompletion),
      how:
        atCompletion === undefined
          ? noIndex
          : `BAC − EAC = ${hours(budget)} − ${hours(atCompletion)}`,
    }),
    row('TCPI', {
      value: index(all.toCompleteIndex),
      how:
        budget > actual
          ? `(BAC − EV) ÷ (BAC − AC) = ${hours(budget - earned)} ÷ ${hours(budget - actual)}`
          : hows.usedUp,
    }),
  ];
}

function scheduleRows(
  { schedule, weeks: gone, plannedWeeks }: ProjectEarned,
  hows: Hows,
  weeks: (count: number) => string,
): Row[] {
  const { earnedTime, scheduleIndex, estimateAtCompletion } = schedule;
  const begun = scheduleIndex !== undefined;
  return [
    row('ES', {
      value: weeks(earnedTime),
      how: hows.ES,
    }),
    row('SV(t)', {
      value: weeks(schedule.scheduleVariance),
      how: `ES − ${hows.timeGone} = ${weeks(earnedTime)} − ${weeks(gone)}`,
    }),
    row('SPI(t)', {
      value: index(scheduleIndex),
      how: begun ? `ES ÷ ${hows.timeGone} = ${weeks(earnedTime)} ÷ ${weeks(gone)}` : hows.notBegun,
    }),
    row('IEAC(t)', {
      value: estimateAtCompletion === undefined ? undefined : weeks(estimateAtCompletion),
      how:
        estimateAtCompletion === undefined
          ? hows.noTimeIndex
          : `${hows.plannedTime} ÷ SPI(t) = ${weeks(plannedWeeks)} ÷ ${index(scheduleIndex)}`,
    }),
  ];
}
