import { counted } from '../counted.ts';
import { earned } from './plan/earned.ts';
import { forecast } from './plan/forecast.ts';

/** Hours, phases, the plan, the forecast, earned value. */
export const plan = {
  states: { 'not started': 'not started', 'under way': 'under way', finished: 'finished' },
  helper: 'helper',
  allOfIt: 'All of it',
  hours: {
    title: 'Hours',
    description: (name: string) =>
      `Every hours row of ${name}, with totals by phase and kind of work.`,
    document: 'Hours ledger',
    lead: '{hours}, {how}.',
    download: 'Download the ledger',
    whatIsPlanned:
      'What was planned, and what is still to come, is on the {plan}. {earned} has the standard figures.',
    thePlan: 'plan',
    earnedValue: 'Earned value',
    estimate: 'Estimate against actual',
    byPhase: 'By phase',
    byWork: 'By kind of work',
    byPerson: 'By person',
    whatPhases: 'What each phase is',
    allRows: 'All rows',
    inOrder: 'In order of date, with the running total.',
    sum: (rows: number) => `sum of ${rows} hours ${rows === 1 ? 'row' : 'rows'}`,
    work: 'Work',
    who: 'Who',
    running: 'Running',
    notCounted: 'not counted',
    weekFigure: 'Wide: hours worked in a week, Monday to Sunday.',
    everyWeek: 'Every week in numbers',
    byWeek: 'Hours by week',
    weekFrom: 'Week from',
    lastDays: (days: number) =>
      days === 1 ? 'The last day worked' : `The last ${days} days worked`,
    byDay: 'Hours by day',
    weekDrawing: (weeks: number) => `Hours worked in each of ${counted(weeks, 'week', 'weeks')}.`,
  },
  phases: {
    label: 'Phases',
    planned: 'Planned',
    worked: 'Worked',
    done: 'Done',
    float: 'Float, days',
    plannedHours: 'Planned h',
    actualHours: 'Actual h',
    overHours: 'Over h',
    ratio: 'Actual ÷ planned',
    span: (from: string, to: string) => `${from} to ${to}`,
    forecast: (given: { state: string; low: string; high: string }) =>
      `${given.state}, forecast ${given.low} to ${given.high}`,
    likely: (given: { likely: string; least: string; most: string }) =>
      `${given.likely} (${given.least} to ${given.most})`,
  },
  timeline: {
    caption:
      'Dashed: planned. Wide: worked, with a stop where the phase was called done. Narrow with three ticks: {forecast}, 10, 50 and 90 %. Between circles: waited. Dots: entries. As of {day}.',
    forecast: 'forecast',
    inNumbers: 'The same in numbers',
    drawing: (rows: number, day: string) =>
      `${counted(rows, 'row', 'rows')} as of ${day}: planned dashed, worked wide, forecast as a narrow line with its 10, 50 and 90 % days.`,
    notePlanned: (planned: string) => `${planned} planned`,
    noteWorked: (worked: string, planned: string) => `${worked} of ${planned}`,
    wantedParts: (count: number) => `${count} wanted parts`,
    wanted: (what: string) => `Wanted: ${what}`,
    waited: (what: string, days: number) => `${what}: ${days} ${days === 1 ? 'day' : 'days'}`,
    waiting: (what: string, days: number) =>
      `${what}: ${days} ${days === 1 ? 'day' : 'days'} so far`,
  },
  plan: {
    title: 'Plan',
    description: (name: string) =>
      `Phases of ${name}, planned, worked and forecast, and what holds them back.`,
    document: 'Plan',
    links: '{forecast}. {earned}, the standard figures. {hours}.',
    howForecast: 'How the forecast is worked out, and how it moved',
    everyHours: 'Every hours row',
    phases: 'Phases',
    whatFloat:
      'Float: days that a phase may end after its planned day before the last day of the plan moves, with no phase beginning before its planned day.',
    critical: 'Where nothing may slip',
    byPlan: (chain: string, begins: string) =>
      `By the plan: ${chain}. The first of these begins ${begins}, and a day lost in any of them is a day lost at the end.`,
    byLeft: (chain: string, begins: string) =>
      `By what is left: ${chain}, beginning ${begins}. Worked out from hours left at the pace of the last weeks, as if each phase had all of it.`,
    chained: ', then ',
    atOnce: 'at once',
    onPlannedDay: 'on its planned day',
    afterWait: (what: string) => `after “${what}”`,
    noFloat: (name: string) => `${name}: no float`,
    floatOf: (name: string, days: number) => `${name}: ${counted(days, 'day', 'days')} of float`,
    blocks: 'What blocks what',
    waits: 'Every wait',
    calendar: 'Calendar',
    weeks: 'Hours per week',
  },
  holds: {
    none: 'Nothing is known to hold an open phase back.',
    rule: 'A wait with no known end is left out of the forecast, as nobody could say what to draw. One that is overdue counts as if it came tomorrow.',
    label: 'What holds phases back',
    by: 'Held by',
    since: 'Since',
    days: 'Days',
    expected: 'Expected',
    kinds: { wait: 'wait', part: 'wanted part', preparation: 'sent out', phase: 'phase' },
    nobodyKnows: 'nobody knows',
    seeForecast: 'see forecast',
    overdue: ', overdue',
  },
  waits: {
    label: 'Waits',
    from: 'From',
    until: 'Until',
    days: 'Days',
    for: 'For',
    open: 'open',
    corrected: 'corrected, see {corrections}',
    corrections: 'corrections',
  },
  week: {
    asProject: 'As the project file has it.',
    average: (weeks: number, day: string) =>
      `The project file has no week, so this is the average of the ${counted(weeks, 'week', 'weeks')} up to ${day}.`,
    shape: (hours: string) =>
      `A week has ${hours} h. Only its shape counts in the forecast: how much is worked in a week comes from the pace.`,
    label: 'Hours of a week',
    away: 'Away:',
    range: (from: string, to: string) => `${from} to ${to}`,
  },
  task: { done: 'done', toDo: 'to do' },
  forecast,
  earned,
};
