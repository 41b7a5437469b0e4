import type { View } from '../book/types.ts';
import { type DayNumber, dayNumber, dayOfNumber } from '../plan/day-number.ts';
import type { Range } from '../plan/forecast-types.ts';
import { type Hold, isOpenOn, waitsOn } from '../plan/holds.ts';
import type { PhaseFigures } from '../plan/phases.ts';
import { forecastOn } from '../plan/project-forecast.ts';
import { planOn } from '../plan/project-plan.ts';
import { stretchesOf } from '../plan/stretches.ts';
import { type Day, daysBetween, earliestDay, latestDay, showShortDay } from '../time/day.ts';
import { showDuration } from '../time/duration.ts';
import { type Words, wordsOf } from '../words/words.ts';
import type { PlanLine, PlanLines, PlanMark, WaitLine } from './plan-lines.ts';

/** The plan of a view as lines to draw: its phases, the whole, and what happened. */
export function planLinesOf(view: View, language: string): PlanLines {
  const { plan } = wordsOf(language);
  const rows = view.phases.map((figures) => lineOf(view, figures, plan.timeline));
  return {
    rows: view.phases.length > 1 ? [...rows, wholeOf(view, plan)] : rows,
    marks: marksOf(view),
    asOf: view.day,
    marked: showShortDay(view.day, language),
    language,
  };
}

type Said = Words['plan']['timeline'];

function lineOf(view: View, { phase, hours, state, finished }: PhaseFigures, said: Said): PlanLine {
  const planned = `${showDuration(phase.plannedHours)} h`;
  const worked = hours.rows.map(({ date }) => dayNumber(date));
  return {
    name: phase.name,
    note:
      state === 'not started'
        ? said.notePlanned(planned)
        : said.noteWorked(showDuration(hours.value), planned),
    planned: { from: phase.plannedStart, to: phase.plannedFinish },
    worked: stretchesOf(worked).map(({ from, to }) => ({
      from: dayOfNumber(from),
      to: dayOfNumber(to),
    })),
    finished,
    forecast: rangeOf(view, phase.id),
    waits: waitLines(view, phase.id, said),
  };
}

function wholeOf(view: View, { allOfIt, timeline }: Words['plan']): PlanLine {
  const { project, phases } = view;
  const from = earliestDay(project.phases.map(({ plannedStart }) => plannedStart));
  const to = latestDay(project.phases.map(({ plannedFinish }) => plannedFinish));
  const planned = project.phases.reduce((sum, { plannedHours }) => sum + plannedHours, 0);
  const allDone = phases.every(({ state }) => state === 'finished');
  return {
    name: allOfIt,
    note: timeline.noteWorked(
      showDuration(view.hoursByPhase.total.value),
      `${showDuration(planned)} h`,
    ),
    planned: from && to && { from, to },
    worked: [],
    finished: allDone ? latestDay(phases.map(({ finished }) => finished)) : undefined,
    forecast: rangeOf(view, undefined),
    waits: [],
  };
}

function rangeOf(view: View, phase: string | undefined): PlanLine['forecast'] {
  const result = forecastOn(view);
  if (result.kind !== 'forecast') return undefined;
  const range = phase === undefined ? result.finish : result.phases.find(({ id }) => id === phase);
  return range && asDays(range);
}

function asDays({ low, middle, high }: Range): { low: Day; middle: Day; high: Day } {
  const day = (number: DayNumber) => dayOfNumber(number);
  return { low: day(low), middle: day(middle), high: day(high) };
}

/** Waits of a phase, past and present; what it wants is one line, however many parts that is. */
function waitLines(view: View, phase: string, said: Said): WaitLine[] {
  const { holds } = planOn(view);
  const ours = holds.filter(({ kind, phases }) => kind !== 'wait' && phases.includes(phase));
  const wanted = ours.filter(({ kind }) => kind === 'part');
  return [
    ...waitsOn(view)
      .filter((wait) => wait.phase === phase)
      .map(({ what, date, ended, expected }) =>
        waitLine(view.day, { what, from: date, until: ended, expected }, said),
      ),
    ...ours
      .filter(({ kind }) => kind === 'preparation')
      .map(({ what, since, expected }) =>
        waitLine(view.day, { what, from: since, expected }, said),
      ),
    ...(wanted.length > 0 ? [wantedLine(wanted, view.day, said)] : []),
  ];
}

function wantedLine(wanted: readonly Hold[], day: Day, said: Said): WaitLine {
  const what =
    wanted.length > 1 ? said.wantedParts(wanted.length) : said.wanted(wanted[0]?.what ?? '');
  const from = earliestDay(wanted.map(({ since }) => since)) ?? day;
  return waitLine(day, { what, from }, said);
}

interface Waited {
  readonly what: string;
  readonly from: Day;
  readonly until?: Day | undefined;
  readonly expected?: Day | undefined;
}

function waitLine(day: Day, { what, from, until, expected }: Waited, said: Said): WaitLine {
  const open = isOpenOn(until, day);
  const to = open ? day : (until ?? day);
  const days = daysBetween(from, to);
  const label = (open ? said.waiting : said.waited)(shorten(what), days);
  const line = { label, from, to };
  return open && expected !== undefined && expected > day ? { ...line, atMost: expected } : line;
}

// More would run off a screen of 360 pixels.
const MOST_LETTERS = 36;

function shorten(text: string): string {
  if (text.length <= MOST_LETTERS) return text;
  return `${text.slice(0, MOST_LETTERS).replace(/[\s,;.:]*\S*$/, '')} …`;
}

/** Entries as dots; days a machine was got as events. */
function marksOf({ project, day }: View): PlanMark[] {
  const entries = project.entries
    .filter(({ date }) => date <= day)
    .map(({ date, title }) => ({ day: date, kind: 'entry' as const, label: title }));
  const machines = project.sources.flatMap(({ acquired, name }) =>
    acquired !== undefined && acquired <= day
      ? { day: acquired, kind: 'event' as const, label: name }
      : [],
  );
  return [...entries, ...machines];
}
