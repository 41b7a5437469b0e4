import { counted } from '../../counted.ts';

/** Earned value, by the names of ANSI/PMI 19-006, and earned schedule, by Lipke's. */
export const earned = {
  title: 'Earned value',
  description: (name: string) =>
    `Standard earned-value and earned-schedule figures of ${name}, in hours, with what they mean.`,
  lead: (day: string) =>
    `As of ${day}, in hours, for readers who know these figures from elsewhere.`,
  none: 'No phases are planned, so there is nothing to measure against.',
  rule: 'A phase earns half of its planned hours when it is begun and the rest when it is finished (the fixed 50/50 rule), whatever it took. Money is on the {costs}, dates are on the {plan}.',
  costSheet: 'cost sheet',
  plan: 'plan',
  caption: 'Dashed: planned (PV). Narrow: earned (EV). Wide: worked (AC). A point a week.',
  short: 'Short',
  figure: 'Figure',
  how: 'How',
  inNumbers: 'The curve in numbers',
  byWeek: 'Earned value by week',
  drawing: (weeks: number) =>
    `Planned, earned and actual hours of ${counted(weeks, 'week', 'weeks')}: planned dashed, earned narrow, actual wide.`,
  weeks: (count: string) => `${count} weeks`,
  names: {
    BAC: ['Budget at completion', 'all that was planned'],
    PV: ['Planned value', 'what should be done by now, at its planned hours'],
    EV: ['Earned value', 'what is done by now, at its planned hours'],
    AC: ['Actual cost', 'hours worked on it'],
    CV: ['Cost variance', 'hours in hand; negative when it took more'],
    SV: ['Schedule variance', 'hours ahead of the plan; negative when behind'],
    CPI: ['Cost performance index', 'planned hours done for each hour worked'],
    SPI: [
      'Schedule performance index',
      'share of what should be done that is done; 1 at the end, however late',
    ],
    EAC: ['Estimate at completion', 'hours in all, if it goes on as so far'],
    ETC: ['Estimate to complete', 'hours still to work, if it goes on as so far'],
    VAC: ['Variance at completion', 'hours in hand at the end; negative when over'],
    TCPI: ['To-complete performance index', 'the CPI that the rest needs to end on budget'],
    ES: ['Earned schedule', 'how far into the plan what is done should have been done'],
    'SV(t)': ['Schedule variance in time', 'ahead of the plan; negative when behind'],
    'SPI(t)': ['Schedule performance index in time', 'weeks of plan done for each week gone'],
    'IEAC(t)': ['Estimate at completion in time', 'how long it all takes, if it goes on as so far'],
  } as Readonly<Record<EarnedName, readonly [name: string, means: string]>>,
  hows: {
    BAC: 'sum of the planned hours of all phases',
    PV: 'each phase spread over the working time between its planned days',
    EV: '50/50 rule: half of the planned hours when a phase is begun, the rest when it is finished',
    AC: 'sum of the hours rows',
    noWork: 'nothing is worked yet',
    noPlan: 'by the plan nothing had to be done yet',
    noIndex: 'nothing is earned or worked yet, so there is no CPI to go on',
    usedUp: 'the budget is used up, so no index could keep it',
    ES: 'where EV lies on the curve of PV, straight between ends of weeks',
    timeGone: 'time gone',
    notBegun: 'the plan has not begun',
    noTimeIndex: 'nothing is earned yet, so there is no SPI(t) to go on',
    plannedTime: 'planned time',
  },
};

/** Short names of the figures, which are the same in every language. */
export type EarnedName =
  | 'BAC'
  | 'PV'
  | 'EV'
  | 'AC'
  | 'CV'
  | 'SV'
  | 'CPI'
  | 'SPI'
  | 'EAC'
  | 'ETC'
  | 'VAC'
  | 'TCPI'
  | 'ES'
  | 'SV(t)'
  | 'SPI(t)'
  | 'IEAC(t)';
