import type { Point } from '../model/photo-fields.ts';
import type { TwoPoints } from '../model/two-points.ts';
import { type Frame, type Placing, placed, times } from './frame.ts';
import type { Size } from './pixels.ts';

/** How one photo of a pair lies: its size in pixels, and two places in it. */
export interface Half extends Size {
  readonly at: TwoPoints;
}

/** Both halves of a pair in one frame, and how much of the photo from before it shows. */
export interface Aligned {
  readonly before: Frame;
  readonly after: Frame;
  /** Share of the area of the photo from before. */
  readonly shared: number;
  /** How many pixels of the frame one of the later photo becomes, across. */
  readonly scale: number;
}

/** Steps across the photo from before in which the common frame is looked for. */
const STEPS = 96;

/**
 * Lays the later photo over the one from before, so that both places fall on one another: it is turned, scaled and moved, and both
 * are cut to the largest upright rectangle that both fill. `widest` bounds the width of the frame.
 */
export function align(before: Half, after: Half, widest: number): Aligned {
  const onto = similarity(pixels(after), pixels(before));
  const corners = cornersOf(after).map((corner) => placed(corner, onto));
  const edge = 2 * Math.max(1, before.width / widest);
  const { left, top, width, height } = commonFrame(corners, before, edge);
  const shrink = Math.min(1, widest / width);
  const size = {
    width: Math.max(1, Math.floor(width * shrink)),
    height: Math.max(1, Math.floor(height * shrink)),
  };
  const cut: Placing = { a: shrink, b: 0, x: -left * shrink, y: -top * shrink };
  const over = times(cut, onto);
  return {
    before: { ...size, placing: cut },
    after: { ...size, placing: over },
    shared: (width * height) / (before.width * before.height),
    scale: Math.hypot(over.a, over.b),
  };
}

/** The turn, scale and shift that carry one pair of points to another: as complex numbers, `to = m · from + t`. */
function similarity([p, q]: TwoPoints, [r, s]: TwoPoints): Placing {
  const [fromX, fromY] = [q[0] - p[0], q[1] - p[1]];
  const [toX, toY] = [s[0] - r[0], s[1] - r[1]];
  const square = fromX ** 2 + fromY ** 2;
  const a = (toX * fromX + toY * fromY) / square;
  const b = (toY * fromX - toX * fromY) / square;
  return { a, b, x: r[0] - (a * p[0] - b * p[1]), y: r[1] - (b * p[0] + a * p[1]) };
}

function pixels({ at, width, height }: Half): TwoPoints {
  const [[x1, y1], [x2, y2]] = at;
  return [
    [x1 * width, y1 * height],
    [x2 * width, y2 * height],
  ];
}

function cornersOf({ width, height }: Size): Point[] {
  return [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
}

/** The largest upright rectangle inside a turned one, `edge` pixels away from its sides, and inside the photo from before. */
function commonFrame(corners: readonly Point[], { width, height }: Size, edge: number) {
  let best = { left: 0, top: 0, width: 0, height: 0 };
  const steps = Array.from({ length: STEPS + 1 }, (_, step) => (step * width) / STEPS);
  const beside = corners.flatMap(([x]) => [x - edge, x + edge]);
  const across = [...steps, ...beside.filter((x) => x >= 0 && x <= width)];
  const leastX = Math.min(...corners.map(([x]) => x)) + edge;
  const mostX = Math.max(...corners.map(([x]) => x)) - edge;
  const spans = across
    .filter((x) => x >= leastX && x <= mostX)
    .map((x) => ({ x, ...spanAt(x, corners) }));
  for (const one of spans)
    for (const other of spans.filter(({ x }) => x > one.x)) {
      // The outline is convex, so that what fits at both sides fits between.
      const top = Math.max(0, one.top + edge, other.top + edge);
      const bottom = Math.min(height, one.bottom - edge, other.bottom - edge);
      const area = (other.x - one.x) * (bottom - top);
      if (bottom > top && area > best.width * best.height)
        best = { left: one.x, top, width: other.x - one.x, height: bottom - top };
    }
  return best;
}

/** From where to where an outline goes at a distance across; empty beside it. */
function spanAt(x: number, corners: readonly Point[]): { top: number; bottom: number } {
  const crossings = corners.flatMap(([x1, y1], index) => {
    const [x2, y2] = corners[(index + 1) % corners.length] ?? [x1, y1];
    if (x < Math.min(x1, x2) || x > Math.max(x1, x2)) return [];
    return x1 === x2 ? [y1, y2] : [y1 + ((y2 - y1) * (x - x1)) / (x2 - x1)];
  });
  return { top: Math.min(...crossings), bottom: Math.max(...crossings) };
}
