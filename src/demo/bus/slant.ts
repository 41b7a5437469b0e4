import type { Point } from '../shape.ts';

/** A place in the bus, in millimetres: x to the rear, y to the right side (0 on the left skin), z up. */
export type Place = readonly [x: number, y: number, z: number];

const SCALE = 0.346;
const ORIGIN: Point = [700, 1180];
/** How a millimetre along each axis shows on the sheet, before scaling: parallel projection from the left front, a little above. */
const ALONG: Point = [0.86, -0.2];
const ACROSS: Point = [-0.5, -0.24];
const UP: Point = [0, -0.95];

/** Where a place in the bus lies on the sheet. */
export function slant([x, y, z]: Place): Point {
  const sum = (axis: 0 | 1): number =>
    ORIGIN[axis] + SCALE * (x * ALONG[axis] + y * ACROSS[axis] + z * UP[axis]);
  return [sum(0), sum(1)];
}

/** Marks drawn for a side elevation, laid into the upright plane at a distance `y` from the left skin. */
export function onSide(y: number, marks: string): string {
  const [left, top] = slant([0, y, 0]);
  const matrix = [ALONG[0] * SCALE, ALONG[1] * SCALE, -UP[0] * SCALE, -UP[1] * SCALE, left, top];
  return `<g transform="matrix(${matrix.map((value) => Math.round(value * 1e6) / 1e6).join(' ')})">${marks}</g>`;
}
