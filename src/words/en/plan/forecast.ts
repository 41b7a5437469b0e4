import { counted } from '../../counted.ts';

/** When it will be done, how that is worked out, and how it moved. */
export const forecast = {
  title: 'Forecast',
  description: (name: string) =>
    `When ${name} will be done, as a range, how that is worked out, and how it moved.`,
  document: 'Forecast',
  label: (day: string) => `Forecast as of ${day}`,
  notYet: (reason: string) => `Not yet: ${reason}.`,
  loop: (ids: string) => `Not yet: phases wait for each other (${ids}).`,
  nothingPlanned: 'Nothing is planned.',
  finishedOn: (day: string) => `Finished on ${day}.`,
  doneOn: (day: string) => `Done on ${day}, by nine draws in ten.`,
  doneBetween: (low: string, high: string, middle: string) =>
    `Done between ${low} and ${high}, by eight draws in ten; by ${middle} in half of them.`,
  reasons: {
    tooFar: (weeks: number, years: number) =>
      `at the pace of the last ${weeks} weeks it might take more than ${years} years`,
    fewFinished: (finished: number, least: number) =>
      `${finished} of at least ${least} phases are finished with hours, and estimates are adjusted by how those came out`,
    fewWeeks: (weeks: number, least: number) =>
      `there are ${weeks} of at least ${least} weeks of hours to take the pace from`,
    noPace: (weeks: number) => `nothing was worked in the last ${weeks} weeks, so there is no pace`,
    noTime: 'the working calendar has no time in any week',
  },
  hangsOn: (drivers: string) => `It hangs most on: ${drivers}.`,
  pace: 'the pace of the weeks to come',
  caption:
    'Bars: draws that end on those days, the outermost hundredths in the outer bars. Line below: 10, 50 and 90 % of them. Forecast as of {day}; {how}.',
  how: 'how it is worked out',
  from: 'From the rows up to {day}: hours left, by the builder’s own past ratios, over the builder’s own pace, through the {calendar}, the links between {phases} and the {waits}, drawn many times with the same seed. Only what was known on the day is in it.',
  calendar: 'calendar',
  phases: 'phases',
  waits: 'waits',
  notInIt: (what: string) => `Not in it, since nobody knows when they end: ${what}.`,
  drawing: (low: string, middle: string, high: string) =>
    `Forecast finish: 10 % of draws by ${low}, 50 % by ${middle}, 90 % by ${high}.`,
  moves: {
    title: 'How it moved',
    caption:
      'Across: the day of an entry. Up: the finish forecast on that day, 10 to 90 %, the dot at 50 %. Dashed: the last day of the plan.',
    finished: 'Wide: the day it was finished.',
    inNumbers: 'Every entry in numbers',
    label: 'Forecasts by entry',
    drawing: (entries: number, from: string, to: string) =>
      `Forecast finish on the days of ${counted(entries, 'entry', 'entries')}, from ${from} to ${to}; each from the day that 10 % of draws do not pass to that of 90 %.`,
  },
  record: {
    title: 'How well it has done',
    label: 'Forecasts of finished phases',
    finished: 'Finished',
    held: 'Held',
    passed: 'Passed',
    beaten: 'Beaten',
    counts: (given: { all: number; held: number; share: number; late: number; early: number }) =>
      `Entries forecast a finish that is known by now ${given.all} times, as a range that should hold it in eight of ten. Held: ${given.held}, ${given.share} %; passed: ${given.late}; beaten: ${given.early}.`,
    passedMost: (times: number, phase: string, ratio: string) =>
      `Passed most often (${times}): ${phase}, which took ${ratio} times its planned hours.`,
    beatenMost: (given: { times: number; phase: string; gone: string; came: string }) =>
      `Beaten most often (${given.times}): ${given.phase}, forecast at a pace of ${given.gone} h a week, where ${given.came} h came.`,
  },
  left: {
    title: 'Hours left',
    rule: (typical: string) =>
      `Planned × ${typical} − worked, with a tenth of the plan at least. Each draw takes ratios of its own around {ratios}; the sum of the draws lies between {low} and {high} h in eight of ten.`,
    pastOnes: 'the past ones',
    planned: 'Planned h',
    worked: 'Worked h',
    left: 'Left h',
  },
  ratios: {
    title: 'What finished phases say',
    mean: (given: { typical: string; low: string; high: string }) =>
      `Actual over planned hours of each, ${given.typical} as their geometric mean. In eight of ten cases the next phase will come out at ${given.low} to ${given.high}: the fewer are finished, the less they tell.`,
    spread: (given: {
      typical: string;
      spread: string;
      first: string;
      count: number;
      freedom: number;
    }) =>
      `Logarithms of the ratios have mean ln ${given.typical} and standard deviation ${given.spread}, in which one phase more with ${given.first} is counted: −20 to +30 %, the range of a budget estimate (AACE 18R-97, class 3). The range above is the mean ± t·${given.spread}·√(1 + 1/${given.count}), with Student’s t of ${given.freedom} degrees of freedom.`,
  },
  paces: {
    title: 'Pace',
    mean: (given: { hours: string; weeks: number; day: string }) =>
      `${given.hours} h a week, the average of ${given.weeks} weeks of seven days up to ${given.day}. Weeks mostly away are left out; of a week partly away the hours are brought up to a whole one.`,
    label: 'Pace by week',
    weekTo: 'Week to',
    worked: 'Worked h',
    whole: 'Whole week h',
  },
  drivers: {
    title: 'What the finish hangs on',
    rule: 'Decides: share of draws in which a little more of it would have moved the finish. With one pair of hands most phases always do, so the rank correlation (Spearman’s) beside it says more: how closely the finish follows it, 1 or −1 at the most.',
    decides: 'Decides',
    correlation: 'Correlation',
    always: 'always',
  },
};
