import type { Point } from './photo-fields.ts';

/** Two places on a photo that are the same on another one. */
export type TwoPoints = readonly [Point, Point];

/** `0.31 0.42, 0.70 0.44`: two points in fractions of a photo as it is published; undefined for anything else. */
export function parseTwoPoints(text: string): TwoPoints | undefined {
  const points = text.split(',').map((point) => point.trim().split(/\s+/));
  const numbers = points
    .flat()
    .map((written) => (/^(?:\d+(?:\.\d+)?|\.\d+)$/.test(written) ? Number(written) : -1));
  if (points.length !== 2 || points.some((point) => point.length !== 2)) return undefined;
  if (numbers.some((number) => number < 0 || number > 1)) return undefined;
  const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = numbers;
  return [
    [x1, y1],
    [x2, y2],
  ];
}

/** Whether two points lie far enough apart to say how a photo is turned and how large it is: a twentieth of it. */
export function areApart([[x1, y1], [x2, y2]]: TwoPoints): boolean {
  return Math.hypot(x2 - x1, y2 - y1) >= 0.05;
}
