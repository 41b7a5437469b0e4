import { outline, type Point, polar, spread } from './shape.ts';

/** Sheet metal cut across: the band along a line of bends, `thickness` wide (one number, or one for each point). */
export function sheetMetal(
  points: readonly Point[],
  thickness: number | readonly number[],
): string {
  const half = (index: number): number =>
    (typeof thickness === 'number' ? thickness : (thickness[index] ?? 0)) / 2;
  const side = (sign: number): Point[] =>
    points.map(([x, y], index) => {
      const [normalX, normalY] = mitre(points, index);
      return [x + sign * half(index) * normalX, y + sign * half(index) * normalY];
    });
  return outline(...side(1), ...side(-1).reverse());
}

/** Points of a bend: an arc in short chords, for sheet metal that goes round a corner. */
export function bend(centre: Point, radius: number, [from, to]: Point): Point[] {
  return spread(from, to, 9).map((bearing) => polar(centre, radius, bearing));
}

/** Which way is outwards at a point, long enough that both neighbouring edges keep their distance. */
function mitre(points: readonly Point[], index: number): Point {
  const here = points[index] ?? [0, 0];
  const before = points[index - 1];
  const after = points[index + 1];
  const first = normal(before ?? here, before ? here : (after ?? here));
  const second = after ? normal(here, after) : first;
  const sum: Point = [first[0] + second[0], first[1] + second[1]];
  const along = sum[0] * first[0] + sum[1] * first[1];
  return along < 0.2 ? first : [sum[0] / along, sum[1] / along];
}

function normal([x1, y1]: Point, [x2, y2]: Point): Point {
  const length = Math.hypot(x2 - x1, y2 - y1) || 1;
  return [(y2 - y1) / length, (x1 - x2) / length];
}
