import { addDays, type Day, daysBetween, earliestDay, latestDay, showDay } from '../time/day.ts';
import { wordsOf } from '../words/words.ts';
import { type NamedDay, nameDays, namedDays } from './month-axis.ts';
import { linearScale } from './scale.ts';
import { across, type Drawing, fluidDrawing, node, type SvgNode } from './svg.ts';

/** Days from one to another, both included. */
export interface Days {
  readonly from: Day;
  readonly to: Day;
}

/** Something a phase waits for; until `to` at least, until `atMost` when that is not sure. */
export interface WaitLine extends Days {
  readonly label: string;
  readonly atMost?: Day;
}

/** A phase, or the finish of the whole, as a row of the drawing. */
export interface PlanLine {
  readonly name: string;
  /** A few words at the right: hours worked and planned. */
  readonly note: string;
  readonly planned: Days | undefined;
  /** Stretches in which it was worked on. */
  readonly worked: readonly Days[];
  readonly finished: Day | undefined;
  /** Finish in 10, 50 and 90 % of draws. */
  readonly forecast: { readonly low: Day; readonly middle: Day; readonly high: Day } | undefined;
  readonly waits: readonly WaitLine[];
}

/** Something that happened on a day. */
export interface PlanMark {
  readonly day: Day;
  readonly kind: 'entry' | 'event';
  readonly label: string;
}

/** All that is drawn. */
export interface PlanLines {
  readonly rows: readonly PlanLine[];
  readonly marks: readonly PlanMark[];
  readonly asOf: Day;
  /** The day of the drawing in words. */
  readonly marked: string;
  readonly language: string;
}

const AXIS = 22;
const LABEL = 14;
const PLANNED = 23;
const WORKED = 31;
const FORECAST = 39;
const ROW = 48;
const WAIT = 30;
/** Month names come again so often that one line of them is on a phone's screen. */
const ROWS_PER_AXIS = 12;

type Place = (day: Day) => number;

/**
 * Planned, worked and forecast, a phase to a row:
 *
 *     Floor, ribs and sills          88:30 of 110:00 h
 *     - - - - - - - -                                    planned, dashed
 *     =====   ======                                     worked, wide; left open where nothing was done
 *                  :      |----|-------|                 forecast: 10, 50 and 90 % of draws
 *     waits for the sill blank
 *         o------------o- - -o                           at least, at most
 */
export function drawPlanLines({ rows, marks, asOf, marked, language }: PlanLines): Drawing {
  const { from, to } = spanOf(rows, marks, asOf);
  const scale = linearScale([0, daysBetween(from, to)], [0.5, 99.5]);
  const place: Place = (day) => scale(daysBetween(from, day));
  const named = namedDays(from, to, language);
  const { nodes, bottom } = stack(rows, named, place);

  const grid = named.map(({ day }) => upright(place(day), [LABEL + 4, bottom], 'grid'));
  const today = [
    upright(place(asOf), [LABEL + 4, bottom + 18], 'centre'),
    node('text', { ...beside(place(asOf)), y: bottom + 32, class: 'small' }, marked),
  ];
  const title = wordsOf(language).plan.timeline.drawing(rows.length, showDay(asOf, language));
  return fluidDrawing(bottom + 36, title, [
    ...grid,
    ...today,
    ...nodes,
    ...marks.map((mark) => drawMark(mark, bottom + 9, place)),
  ]);
}

/** Rows from the top down, with the axis again every so many of them. */
function stack(
  rows: readonly PlanLine[],
  named: readonly NamedDay[],
  place: Place,
): { nodes: SvgNode[]; bottom: number } {
  const nodes: SvgNode[] = [];
  let bottom = 0;
  for (const [index, row] of rows.entries()) {
    if (index % ROWS_PER_AXIS === 0) {
      nodes.push(...nameDays(named, bottom + LABEL, place));
      bottom += AXIS;
    }
    nodes.push(...drawRow(row, bottom, place));
    bottom += ROW;
    for (const wait of row.waits) {
      nodes.push(...drawWait(wait, bottom, place));
      bottom += WAIT;
    }
  }
  return { nodes, bottom };
}

function drawRow(row: PlanLine, top: number, place: Place): SvgNode[] {
  const { name, note, planned, worked, finished, forecast } = row;
  // A single day of a long plan is less than a pixel; the square ends keep it in sight.
  const ends = { 'stroke-linecap': 'square' };
  return [
    node('text', { x: '0%', y: top + LABEL }, name),
    node('text', { x: '100%', y: top + LABEL, 'text-anchor': 'end', class: 'small' }, note),
    ...(planned ? [level(span(planned, place), top + PLANNED, 'planned')] : []),
    ...worked.map((days) => level(span(days, place), top + WORKED, 'wide', ends)),
    ...(finished
      ? [upright(place(addDays(finished, 1)), [top + WORKED - 5, top + WORKED + 5], 'wide')]
      : []),
    ...(forecast ? drawForecast(forecast, top + FORECAST, place) : []),
  ];
}

function drawForecast(
  { low, middle, high }: NonNullable<PlanLine['forecast']>,
  y: number,
  place: Place,
): SvgNode[] {
  const tick = (day: Day, size: number) => upright(place(day), [y - size, y + size]);
  return [level([place(low), place(high)], y), tick(low, 4), tick(middle, 6), tick(high, 4)];
}

function drawWait({ label, from, to, atMost }: WaitLine, top: number, place: Place): SvgNode[] {
  const y = top + 18;
  const end = (day: Day) => node('circle', { cx: across(place(day)), cy: y, r: 3, class: 'open' });
  return [
    node('text', { x: '0%', y: top + 11, class: 'small' }, label),
    level([place(from), place(to)], y),
    ...(atMost ? [level([place(to), place(atMost)], y, 'planned'), end(atMost)] : []),
    end(from),
    end(to),
  ];
}

/** An entry is a dot, an event a short upright; the name is there for a pointer and for assistive technology. */
function drawMark({ day, kind, label }: PlanMark, y: number, place: Place): SvgNode {
  const name = node('title', {}, label);
  const x = across(place(day));
  return kind === 'entry'
    ? node('circle', { cx: x, cy: y, r: 2.5, class: 'mark' }, name)
    : node('line', { x1: x, x2: x, y1: y - 6, y2: y + 6, class: 'wide' }, name);
}

/** From the start of the first day to the end of the last. */
function span({ from, to }: Days, place: Place): readonly [number, number] {
  return [place(from), place(addDays(to, 1))];
}

function level(
  [start, end]: readonly [number, number],
  y: number,
  kind?: string,
  more: SvgNode['attributes'] = {},
): SvgNode {
  return node('line', { x1: across(start), x2: across(end), y1: y, y2: y, class: kind, ...more });
}

function upright(percent: number, [y1, y2]: readonly [number, number], kind?: string): SvgNode {
  return node('line', { x1: across(percent), x2: across(percent), y1, y2, class: kind });
}

/** Lettering stays on the sheet: at the left edge it starts there, at the right edge it ends there. */
function beside(percent: number): SvgNode['attributes'] {
  if (percent < 15) return { x: '0%' };
  if (percent > 85) return { x: '100%', 'text-anchor': 'end' };
  return { x: across(percent), 'text-anchor': 'middle' };
}

function spanOf(rows: readonly PlanLine[], marks: readonly PlanMark[], asOf: Day): Days {
  const days = rows.flatMap(({ planned, worked, finished, forecast, waits }) => [
    planned,
    ...worked,
    { from: finished, to: finished },
    { from: forecast?.low, to: forecast?.high },
    ...waits.map((wait) => ({ from: wait.from, to: wait.atMost ?? wait.to })),
  ]);
  const marked = marks.map(({ day }) => day);
  const from = earliestDay([...days.map((some) => some?.from), ...marked, asOf]) ?? asOf;
  const to = latestDay([...days.map((some) => some?.to), ...marked, asOf]) ?? asOf;
  return { from, to: addDays(to, 1) };
}
