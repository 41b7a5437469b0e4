import type { Entry, View } from '../book/types.ts';
import type { PhaseFigures } from '../plan/phases.ts';
import { addDays, type Day, daysBetween, earliestDay, latestDay, showDay } from '../time/day.ts';
import { showDuration } from '../time/duration.ts';
import { linearScale } from './scale.ts';
import { across, type Drawing, fluidDrawing, node, type SvgNode } from './svg.ts';

const ROW = 46;
const TOP = 30;
const LABEL = 14;
const PLANNED = 23;
const ACTUAL = 31;

/** What the timeline needs besides the view. */
export interface TimelineOptions {
  readonly language: string;
  readonly entries: readonly Entry[];
  /** The day to mark; it is the day of the view. */
  readonly marked: string;
}

/**
 * Phases, planned against actual:
 *
 *     Floor, ribs and sills                188:30 of 110:00
 *     - - - - - - -                       planned, dashed and narrow
 *     =====================               worked, wide
 *                 :                       the day of the view
 */
export function drawTimeline(view: View, { language, entries, marked }: TimelineOptions): Drawing {
  const [from, to] = spanOf(view);
  const scale = linearScale([0, daysBetween(from, to)], [0.5, 99.5]);
  const place = (day: Day) => scale(daysBetween(from, day));
  const bottom = TOP + view.phases.length * ROW;
  const height = bottom + 26;

  const rows = view.phases.flatMap((phase, index) =>
    drawPhase(phase, TOP + index * ROW, place, view.day),
  );
  const marks = entries
    .filter(({ date }) => date <= view.day)
    .map(({ date }) =>
      node('circle', { cx: across(place(date)), cy: bottom + 10, r: 2.5, class: 'mark' }),
    );
  const today = [
    node('line', {
      x1: across(place(view.day)),
      x2: across(place(view.day)),
      y1: TOP - 6,
      y2: bottom + 16,
      class: 'centre',
    }),
    node('text', { ...beside(place(view.day)), y: height - 2, class: 'small' }, marked),
  ];
  const title = `Timeline of ${view.phases.length} phases as of ${showDay(view.day, language)}: planned dashed, worked wide.`;
  // The lettering lies on top, with a halo of paper, so that no line runs through it.
  return fluidDrawing(height, title, [
    ...months(from, to, place, bottom, language),
    ...today,
    ...rows,
    ...marks,
  ]);
}

/** A label stands left of its place when that is in the right half, so that it never runs off the sheet. */
function beside(percent: number): Record<string, string> {
  if (percent < 15) return { x: '0%' };
  return percent > 85
    ? { x: '100%', 'text-anchor': 'end' }
    : { x: across(percent), 'text-anchor': 'middle' };
}

function drawPhase(
  { phase, start, last, finished, hours, state }: PhaseFigures,
  top: number,
  place: (day: Day) => number,
  day: Day,
): SvgNode[] {
  const planned = node('line', {
    x1: across(place(phase.plannedStart)),
    x2: across(place(phase.plannedFinish)),
    y1: top + PLANNED,
    y2: top + PLANNED,
    class: 'planned',
  });
  const worked = `${showDuration(hours.value)} of ${showDuration(phase.plannedHours)} h`;
  const label = [
    node('text', { x: '0%', y: top + LABEL }, phase.name),
    node(
      'text',
      { x: '100%', y: top + LABEL, 'text-anchor': 'end', class: 'small' },
      state === 'not started' ? `${showDuration(phase.plannedHours)} h planned` : worked,
    ),
  ];
  if (start === undefined) return [...label, planned];

  const end = finished ?? (state === 'finished' ? last : day) ?? day;
  const actual = node('line', {
    x1: across(place(start)),
    x2: across(place(end)),
    y1: top + ACTUAL,
    y2: top + ACTUAL,
    class: 'wide',
  });
  const stop = finished
    ? [
        node('line', {
          x1: across(place(end)),
          x2: across(place(end)),
          y1: top + ACTUAL - 5,
          y2: top + ACTUAL + 5,
          class: 'wide',
        }),
      ]
    : [];
  return [...label, planned, actual, ...stop];
}

function spanOf(view: View): readonly [Day, Day] {
  const starts = view.phases.flatMap(({ phase, start }) => [phase.plannedStart, start]);
  const ends = view.phases.flatMap(({ phase, finished, last }) => [
    phase.plannedFinish,
    finished,
    last,
  ]);
  return [
    earliestDay(starts) ?? view.project.firstDay,
    latestDay([...ends, view.day]) ?? addDays(view.day, 1),
  ];
}

/** A narrow line at the first of every month, named at each quarter and wherever there is room. */
function months(
  from: Day,
  to: Day,
  place: (day: Day) => number,
  bottom: number,
  language: string,
): SvgNode[] {
  const format = new Intl.DateTimeFormat(language, {
    timeZone: 'UTC',
    month: 'short',
    year: '2-digit',
  });
  const firsts: Day[] = [];
  for (
    let day = `${from.slice(0, 7)}-01` as Day;
    day <= to;
    day = `${addDays(day, 32).slice(0, 7)}-01` as Day
  )
    if (day >= from) firsts.push(day);
  const every = Math.max(1, Math.ceil(firsts.length / 5));
  return firsts.flatMap((day, index) => {
    const line = node('line', {
      x1: across(place(day)),
      x2: across(place(day)),
      y1: TOP - 8,
      y2: bottom,
      class: 'grid',
    });
    if (index % every !== 0 || place(day) > 92) return [line];
    return [
      line,
      node(
        'text',
        {
          x: across(place(day)),
          y: LABEL,
          class: 'small',
          'text-anchor': place(day) < 5 ? 'start' : 'middle',
        },
        format.format(new Date(day)),
      ),
    ];
  });
}
