import { balloon, pointer } from '../dimension.ts';
import { axis, edge, fine, flat, hidden, scaled, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, line, type Point } from '../shape.ts';
import { HALF_TRACK, roofPlan, tyrePlan } from './plan.ts';
import { WHEELBASE } from './side.ts';

const SCALE = 0.32;
const ORIGIN: Point = [580, 715];
/** Pixels to the kilogram for the arrows. */
const REACH = 0.62;

interface Corner {
  readonly number: number;
  readonly x: number;
  /** 1 on the left side (lower on the sheet), -1 on the right. */
  readonly side: 1 | -1;
  readonly kilograms: number;
}

const CORNERS: readonly Corner[] = [
  { number: 1, x: 0, side: 1, kilograms: 396 },
  { number: 2, x: 0, side: -1, kilograms: 410 },
  { number: 3, x: WHEELBASE, side: 1, kilograms: 297 },
  { number: 4, x: WHEELBASE, side: -1, kilograms: 309 },
];

/** Four corners on four platforms, each with an arrow as long as its load. */
export function fourScalesPlan(): string {
  const bus = scaled(
    ORIGIN,
    SCALE,
    roofPlan('#c3cdcd', 0.78) +
      hidden(CORNERS.map(({ x, side }) => tyrePlan(x, side * HALF_TRACK)).join('')),
  );
  return (
    flat(box([110, 110], [1780, 1210]), tint.dust) +
    CORNERS.map(platform).join('') +
    bus +
    axis(line([210, ORIGIN[1]], [1760, ORIGIN[1]])) +
    CORNERS.map(load).join('') +
    notes()
  );
}

function wheelAt({ x, side }: Corner): Point {
  return [ORIGIN[0] + x * SCALE, ORIGIN[1] + side * HALF_TRACK * SCALE];
}

function platform(corner: Corner): string {
  const [x, y] = wheelAt(corner);
  const top = corner.side === 1 ? y - 100 : y - 130;
  return (
    edge(box([x - 140, top], [280, 230], 10), tint.steelDark) +
    fine(box([x - 124, top + 16], [248, 198], 6), tint.steel)
  );
}

function load(corner: Corner): string {
  const [x, y] = wheelAt(corner);
  const foot = y + corner.side * 130;
  const tip = foot + corner.side * corner.kilograms * REACH;
  const badge: Point = [x + 200, y + corner.side * 112];
  return (
    pointer([
      [x, foot],
      [x, tip],
    ]) +
    lettering(`${corner.kilograms} kg`, [x + 36, (foot + tip) / 2 + 24], { size: 50 }) +
    balloon([x + 118, y + corner.side * 108], badge, corner.number)
  );
}

function notes(): string {
  const scale: Point = [1490, 1270];
  return (
    lettering('front', [150, 735], { size: 40, turn: 0 }) +
    lettering('right', [1010, 400], { size: 40, anchor: 'middle' }) +
    lettering('left', [1010, 1070], { size: 40, anchor: 'middle' }) +
    pointer([scale, [scale[0] + 200 * REACH, scale[1]]]) +
    lettering('200 kg', [scale[0] + 200 * REACH + 24, scale[1] + 16], { size: 40 })
  );
}
