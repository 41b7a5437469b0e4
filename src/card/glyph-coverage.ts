import type { Glyph, PathCommand } from 'opentype.js';

/** How many steps there are from paper to ink: more than an eye can tell apart, few enough for a palette. */
export const STEPS = 32;

/** How much of each pixel a glyph covers, in steps; `left` and `top` are its first column and row beside the origin of the glyph. */
export interface Coverage {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly steps: Uint8Array;
}

/** Rows that each row of pixels is looked at in; across, coverage is exact. */
const FINE = 16;

type Edge = readonly [x0: number, y0: number, x1: number, y1: number];

/** Coverage of a glyph of a size whose origin is at (x, y), both less than a pixel. Plain arithmetic, so it is the same on any machine. */
export function coverageOf(glyph: Glyph, size: number, x: number, y: number): Coverage {
  const edges = edgesOf(glyph.getPath(x, y, size).commands);
  const left = Math.floor(Math.min(...edges.flatMap(([x0, , x1]) => [x0, x1])));
  const top = Math.floor(Math.min(...edges.flatMap(([, y0, , y1]) => [y0, y1])));
  const right = Math.ceil(Math.max(...edges.flatMap(([x0, , x1]) => [x0, x1])));
  const bottom = Math.ceil(Math.max(...edges.flatMap(([, y0, , y1]) => [y0, y1])));
  if (edges.length === 0) return { left: 0, top: 0, width: 0, height: 0, steps: new Uint8Array() };

  const [width, height] = [right - left, bottom - top];
  // Each edge tells where coverage begins or ends; the sum along a row is the coverage itself.
  const changes = new Float64Array((width + 2) * height);
  for (const edge of edges) cross(edge, left, top, width + 2, changes);
  const steps = new Uint8Array(width * height);
  for (let row = 0; row < height; row++) {
    let covered = 0;
    for (let column = 0; column < width; column++) {
      covered += changes[row * (width + 2) + column] ?? 0;
      steps[row * width + column] = Math.round(Math.min(1, Math.abs(covered)) * STEPS);
    }
  }
  return { left, top, width, height, steps };
}

function cross(
  [x0, y0, x1, y1]: Edge,
  left: number,
  top: number,
  stride: number,
  changes: Float64Array,
) {
  const sign = (y0 < y1 ? 1 : -1) / FINE;
  const slope = (x1 - x0) / (y1 - y0);
  const [from, to] = y0 < y1 ? [y0, y1] : [y1, y0];
  const last = Math.ceil((to - top) * FINE - 0.5);
  for (let line = Math.ceil((from - top) * FINE - 0.5); line < last; line++) {
    const x = x0 + (top + (line + 0.5) / FINE - y0) * slope - left;
    const column = Math.floor(x);
    const at = Math.floor(line / FINE) * stride + column;
    changes[at] = (changes[at] ?? 0) + sign * (1 - (x - column));
    changes[at + 1] = (changes[at + 1] ?? 0) + sign * (x - column);
  }
}

/** The outlines as straight edges, none of them level. */
function edgesOf(commands: readonly PathCommand[]): Edge[] {
  const edges: Edge[] = [];
  let [x, y, startX, startY] = [0, 0, 0, 0];
  const to = (nextX: number, nextY: number) => {
    if (y !== nextY) edges.push([x, y, nextX, nextY]);
    [x, y] = [nextX, nextY];
  };
  for (const command of commands) {
    if (command.type === 'Z') to(startX, startY);
    else if (command.type === 'M')
      [x, y, startX, startY] = [command.x, command.y, command.x, command.y];
    else if (command.type === 'L') to(command.x, command.y);
    else if (command.type === 'Q') {
      const [fromX, fromY] = [x, y];
      const bend =
        Math.abs(fromX - 2 * command.x1 + command.x) + Math.abs(fromY - 2 * command.y1 + command.y);
      // Then no piece strays from the curve by more than a fiftieth of a pixel.
      const pieces = Math.max(1, Math.ceil(Math.sqrt(bend * 6.25)));
      for (let piece = 1; piece <= pieces; piece++) {
        const t = piece / pieces;
        const along = (a: number, b: number, c: number) =>
          (1 - t) * (1 - t) * a + 2 * t * (1 - t) * b + t * t * c;
        to(along(fromX, command.x1, command.x), along(fromY, command.y1, command.y));
      }
    } else
      throw new Error('the typeface has cubic curves, which cards can not draw: this is our bug');
  }
  return edges;
}
