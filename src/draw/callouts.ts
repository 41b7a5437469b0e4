import type { Point } from '../model/photo-fields.ts';
import type { Words } from '../words/words.ts';
import { across, type Drawing, node, type SvgNode } from './svg.ts';

/** What is drawn of a callout: a place with its number, or a dimension line with its value. */
export interface DrawnCallout {
  readonly at: Point;
  readonly to?: Point | undefined;
  readonly value?: string | undefined;
}

/** A phone's width, at which the circles of numbers must not cover one another. */
const PHONE = 330;
/** Radius of a number's circle, and how far from its place it stands, across and down, in pixels. */
const CIRCLE = 11;
const AWAY = [22, 24] as const;

/**
 * Callouts over a photo, in the manner of ISO 129-1 and of the leader lines of ISO 128-2: narrow lines with a halo, a dot where a
 * leader ends inside an outline, closed arrowheads on a dimension line and its value along it. Places are in per cent both ways, so
 * that they follow the photo; lettering and terminators keep their size.
 *
 *        (1)               806 ± 2.4 mm
 *        /             |<--------------->|
 *       ·              ^ at              ^ to
 */
export function drawCallouts(
  callouts: readonly DrawnCallout[],
  { width, height }: { readonly width: number; readonly height: number },
  { general, photos }: Words,
): Drawing {
  const aspect = width / height;
  const corners = new Map<DrawnCallout, Point>();
  for (const callout of numberedOf(callouts))
    corners.set(callout, cornerFor(callout.at, aspect, callouts, corners));
  const numbered = [...corners].map(([{ at }, corner], index) => leader(at, corner, index + 1));
  const dimensions = callouts.flatMap(({ at, to, value }) =>
    to ? dimension(at, to, aspect, value ?? general.notYetMeasured) : [],
  );
  const title = photos.callouts(callouts.length);
  return {
    title,
    root: node(
      'svg',
      {
        width: '100%',
        height: '100%',
        role: 'img',
        'aria-label': title,
        class: 'drawing callouts',
      },
      ...dimensions,
      ...numbered,
    ),
  };
}

/** Callouts that carry a number: all but dimension lines. */
export function numberedOf<Callout extends DrawnCallout>(callouts: readonly Callout[]): Callout[] {
  return callouts.filter(({ to }) => to === undefined);
}

/** A group whose origin lies at a place of the photo. */
function atPlace([x, y]: Point, ...children: readonly SvgNode[]): SvgNode {
  return node('svg', { x: across(x * 100), y: across(y * 100), overflow: 'visible' }, ...children);
}

/** A line with its halo, in pixels or per cent. */
function haloed(ends: Readonly<Record<'x1' | 'x2' | 'y1' | 'y2', string | number>>): SvgNode[] {
  return [node('line', { ...ends, class: 'halo' }), node('line', { ...ends, class: 'narrow' })];
}

function leader(at: Point, [right, down]: Point, number: number): SvgNode {
  const [x, y] = [AWAY[0] * right, AWAY[1] * down];
  const touch = 1 - CIRCLE / Math.hypot(x, y);
  return atPlace(
    at,
    ...haloed({ x1: 0, y1: 0, x2: rounded(x * touch), y2: rounded(y * touch) }),
    node('circle', { r: 3, class: 'ink' }),
    node('circle', { cx: x, cy: y, r: CIRCLE, class: 'open' }),
    node('text', { x, y: y + 5, 'text-anchor': 'middle' }, String(number)),
  );
}

/** Where a number stands, as signs to the right and down: inside the photo, and away from other numbers and places. */
function cornerFor(
  at: Point,
  aspect: number,
  callouts: readonly DrawnCallout[],
  taken: ReadonlyMap<DrawnCallout, Point>,
): Point {
  const height = PHONE / aspect;
  const pixels = ([x, y]: Point): Point => [x * PHONE, y * height];
  const centre = (place: Point, [right, down]: Point): Point => {
    const [x, y] = pixels(place);
    return [x + AWAY[0] * right, y + AWAY[1] * down];
  };
  const others = [
    ...callouts.filter((other) => other.at !== at).map((other) => pixels(other.at)),
    ...[...taken].map(([other, corner]) => centre(other.at, corner)),
  ];
  const room = (corner: Point): number => {
    const [x, y] = centre(at, corner);
    const inside = Math.min(x, PHONE - x, y, height - y) - CIRCLE;
    const apart = others.map(([x2, y2]) => Math.hypot(x2 - x, y2 - y) - 2 * CIRCLE - 2);
    return Math.min(inside, ...apart, 0);
  };
  const corners: Point[] = [
    [1, -1],
    [-1, -1],
    [1, 1],
    [-1, 1],
  ];
  return corners.reduce((best, corner) => (room(corner) > room(best) ? corner : best));
}

function dimension(at: Point, to: Point, aspect: number, value: string): SvgNode[] {
  const [across1, down] = [to[0] - at[0], (to[1] - at[1]) / aspect];
  const angle = rounded((Math.atan2(down, across1) * 180) / Math.PI);
  const end = (place: Point, turn: number): SvgNode =>
    atPlace(
      place,
      node(
        'g',
        { transform: `rotate(${turn})` },
        ...haloed({ x1: 0, x2: 0, y1: -8, y2: 8 }),
        node('path', { d: 'M0 0 L11 -3 L11 3 Z', class: 'ink' }),
      ),
    );
  // Lettering is read from below or from the right (ISO 129-1).
  const upright = angle >= 90 || angle < -90 ? angle - Math.sign(angle) * 180 : angle;
  return [
    ...haloed({
      x1: across(at[0] * 100),
      y1: across(at[1] * 100),
      x2: across(to[0] * 100),
      y2: across(to[1] * 100),
    }),
    end(at, angle),
    end(to, rounded(angle + 180)),
    lettering(at, to, upright, value),
  ];
}

/** The value along its line, above the middle; near a side of the photo a level one starts, or ends, with the line, so that it stays on the photo. */
function lettering(at: Point, to: Point, angle: number, value: string): SvgNode {
  const middle: Point = [(at[0] + to[0]) / 2, (at[1] + to[1]) / 2];
  const text = (place: Point, anchor: string): SvgNode =>
    atPlace(
      place,
      node('text', { y: -8, transform: `rotate(${rounded(angle)})`, 'text-anchor': anchor }, value),
    );
  const isLevel = Math.abs(angle) <= 45;
  const [left, right] = at[0] < to[0] ? [at, to] : [to, at];
  if (isLevel && middle[0] < 0.25) return text(left, 'start');
  if (isLevel && middle[0] > 0.75) return text(right, 'end');
  return text(middle, 'middle');
}

function rounded(size: number): number {
  return Number(size.toFixed(2));
}
