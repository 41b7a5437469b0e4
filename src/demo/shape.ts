/** A place on the sheet, x to the right and y down, in pixels unless a scene draws in millimetres. */
export type Point = readonly [x: number, y: number];

/** A rectangle from its upper left corner; `radius` rounds the corners. */
export function box([x, y]: Point, [width, height]: Point, radius = 0): string {
  if (radius === 0) return `M${x} ${y}h${width}v${height}h${-width}Z`;
  const r = Math.min(radius, width / 2, height / 2);
  const corner = (dx: number, dy: number): string => `a${r} ${r} 0 0 1 ${dx} ${dy}`;
  return (
    `M${x + r} ${y}h${width - 2 * r}${corner(r, r)}v${height - 2 * r}${corner(-r, r)}` +
    `h${2 * r - width}${corner(-r, -r)}v${2 * r - height}${corner(r, -r)}Z`
  );
}

/** A circle, or an ellipse when a second radius is given. */
export function disc([x, y]: Point, radiusX: number, radiusY = radiusX): string {
  const half = (dx: number): string => `a${radiusX} ${radiusY} 0 1 0 ${dx} 0`;
  return `M${x - radiusX} ${y}${half(2 * radiusX)}${half(-2 * radiusX)}Z`;
}

/** A circle with a hole in it (drawn with the even-odd rule). */
export function ring(centre: Point, outer: number, inner: number): string {
  return disc(centre, outer) + disc(centre, inner);
}

/** Straight strokes through the points, open. */
export function line(...points: Point[]): string {
  return points
    .map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`)
    .join('');
}

/** A closed outline through the points. */
export function outline(...points: Point[]): string {
  return `${line(...points)}Z`;
}

/** An open arc of a circle from one bearing to another; 0° points right, 90° down. */
export function arc(centre: Point, radius: number, [from, to]: Point): string {
  const large = Math.abs(to - from) > 180 ? 1 : 0;
  const [x, y] = polar(centre, radius, to);
  return `${line(polar(centre, radius, from))}A${radius} ${radius} 0 ${large} ${to > from ? 1 : 0} ${round(x)} ${round(y)}`;
}

/** The point at a distance and bearing; 0° points right, 90° down. */
export function polar([x, y]: Point, radius: number, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
}

/** A closed soft curve that follows the points without touching them (a quadratic through the middles). */
export function soft(...points: Point[]): string {
  const middle = (index: number): Point => {
    const [x, y] = points.at(index) ?? [0, 0];
    const [nextX, nextY] = points[(index + 1) % points.length] ?? [0, 0];
    return [round((x + nextX) / 2), round((y + nextY) / 2)];
  };
  const bends = points.map(
    ([x, y], index) => `Q${round(x)} ${round(y)} ${middle(index).join(' ')}`,
  );
  return `M${middle(-1).join(' ')}${bends.join('')}Z`;
}

/** An open soft curve from the first point to the last that follows those between. */
export function softLine(...points: Point[]): string {
  const [first = [0, 0], ...rest] = points;
  const bends = rest.slice(0, -1).map(([x, y], index) => {
    const [nextX, nextY] = rest[index + 1] ?? [x, y];
    return `Q${round(x)} ${round(y)} ${round((x + nextX) / 2)} ${round((y + nextY) / 2)}`;
  });
  return `${line(first)}${bends.join('')}${line(...rest.slice(-1)).replace('M', 'L')}`;
}

/** An uneven round spot; `next` gives numbers from 0 to 1. */
export function blot(centre: Point, radius: number, next: () => number): string {
  const bearings = spread(0, 342, 20);
  return soft(
    ...bearings.map((bearing) => polar(centre, radius * (0.78 + 0.44 * next()), bearing)),
  );
}

/** A toothed wheel: straight flanks are enough at the size of a picture. */
export function gear(
  centre: Point,
  { radius, teeth, depth }: { radius: number; teeth: number; depth: number },
): string {
  const step = 360 / teeth;
  const tooth = (index: number): Point[] => {
    const at = index * step;
    const inner = radius - depth;
    return [
      polar(centre, inner, at - step * 0.36),
      polar(centre, radius, at - step * 0.17),
      polar(centre, radius, at + step * 0.17),
      polar(centre, inner, at + step * 0.36),
    ];
  };
  return outline(...Array.from({ length: teeth }, (_, index) => tooth(index)).flat());
}

/** Evenly spaced numbers from one end to the other, both included. */
export function spread(from: number, to: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => from + ((to - from) * index) / (count - 1));
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
