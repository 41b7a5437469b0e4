import { coloured, fine, flat, tint } from './ink.ts';
import { lettering, letteringWidth } from './lettering.ts';
import { disc, line, outline, type Point, polar } from './shape.ts';

const ARROW = 26;
const GAP = 8;
const OVERSHOOT = 12;

/**
 * A dimension line beside the stretch from one point to another, `offset` pixels to its left as seen when going along.
 *
 * ```
 *   |<--- text --->|
 *   |              |     offset
 *   from          to
 * ```
 */
export function dimension(
  from: Point,
  to: Point,
  { text, offset, size = 36 }: { text: string; offset: number; size?: number },
): string {
  const bearing = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  const aside = (point: Point, distance: number): Point => polar(point, distance, bearing - 90);
  const side = Math.sign(offset);
  const ends: Ends = { start: aside(from, offset), end: aside(to, offset), bearing };
  const extension = (point: Point): string =>
    offset === 0 ? '' : line(aside(point, side * GAP), aside(point, offset + side * OVERSHOOT));
  const room = Math.hypot(to[0] - from[0], to[1] - from[1]) - 2 * ARROW;
  const width = letteringWidth(text, size);
  const measure =
    width < room ? inside(ends, { text, size }) : outside(ends, { text, size, width });
  return fine(extension(from) + extension(to)) + measure;
}

interface Ends {
  readonly start: Point;
  readonly end: Point;
  /** Bearing from start to end, in degrees. */
  readonly bearing: number;
}

/** Arrows and text between the extension lines. */
function inside({ start, end, bearing }: Ends, style: { text: string; size: number }): string {
  return (
    fine(line(start, end)) +
    arrow(end, bearing) +
    arrow(start, bearing + 180) +
    along(start, end, style)
  );
}

/** Where there is no room: arrows from both sides, the text beyond the end. */
function outside(
  { start, end, bearing }: Ends,
  { text, size, width }: { text: string; size: number; width: number },
): string {
  const near = polar(end, ARROW * 1.4, bearing);
  const far = polar(near, width + 10, bearing);
  return (
    fine(line(polar(start, -ARROW * 2, bearing), far)) +
    arrow(end, bearing + 180) +
    arrow(start, bearing) +
    along(near, far, { text, size })
  );
}

/** A filled arrow head, 15° across, its tip on the point. */
export function arrow(
  tip: Point,
  bearing: number,
  { colour = tint.ink as string, length = ARROW } = {},
): string {
  return flat(
    outline(tip, polar(tip, length, bearing + 170), polar(tip, length, bearing - 170)),
    colour,
  );
}

/** A bold line with an arrow head at its last point, for movement and force. */
export function pointer(points: readonly Point[], colour: string = tint.red): string {
  const [before, tip] = points.slice(-2);
  if (!before || !tip) return '';
  const bearing = (Math.atan2(tip[1] - before[1], tip[0] - before[0]) * 180) / Math.PI;
  const shaft = [...points.slice(0, -1), polar(tip, -36, bearing)];
  return coloured(line(...shaft), colour, 7) + arrow(tip, bearing, { colour, length: 48 });
}

/** A leader: a dot on the thing, a slanting line, and its name beside the other end. */
export function leader(target: Point, elbow: Point, text: string): string {
  const right = elbow[0] >= target[0];
  const foot: Point = [elbow[0] + (right ? 28 : -28), elbow[1]];
  const at: Point = [foot[0] + (right ? 12 : -12), foot[1] + 13];
  return (
    fine(line(target, elbow, foot)) +
    flat(disc(target, 8), tint.ink) +
    lettering(text, at, { anchor: right ? 'start' : 'end' })
  );
}

/** A number in a circle, with its leader to the thing. */
export function balloon(target: Point, at: Point, number: number | string): string {
  const text = String(number);
  const bearing = (Math.atan2(target[1] - at[1], target[0] - at[0]) * 180) / Math.PI;
  const mark =
    fine(disc(at, 36), tint.paper) +
    lettering(text, [at[0], at[1] + 17], { size: 34, anchor: 'middle', halo: 'none' });
  return fine(line(polar(at, 36, bearing), target)) + flat(disc(target, 8), tint.ink) + mark;
}

/** Lettering above the middle of a line, never upside down. */
function along(start: Point, end: Point, { text, size }: { text: string; size: number }): string {
  const backwards =
    end[0] < start[0] - 0.001 || (Math.abs(end[0] - start[0]) < 0.001 && end[1] > start[1]);
  const [a, b] = backwards ? [end, start] : [start, end];
  const turn = (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI;
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  return lettering(text, polar(middle, 14, turn - 90), { size, anchor: 'middle', turn });
}
