import { leader, pointer } from '../dimension.ts';
import { fine, flat, scaled, tint } from '../ink.ts';
import { box, line, type Point, spread } from '../shape.ts';
import { groundShadow } from '../solid.ts';
import { busSide, FINISHED } from './side.ts';

const SCALE = 0.335;
const ORIGIN: Point = [430, 1180];

/** The three tones, from the left; the arrow marks the moth. */
export function sideElevationGreens(): string {
  const hatching = fine(
    spread(130, 1850, 45)
      .map((x) => line([x + 22, 1184], [x, 1206]))
      .join(''),
  );
  return (
    flat(box([110, 110], [1780, 1070]), tint.dust) +
    fine(line([90, 1180], [1910, 1180])) +
    hatching +
    groundShadow([866, 1182], 750) +
    scaled(ORIGIN, SCALE, busSide(FINISHED)) +
    names()
  );
}

function at(x: number, y: number): Point {
  return [ORIGIN[0] + x * SCALE, ORIGIN[1] + y * SCALE];
}

function names(): string {
  return (
    leader(at(3240, -1700), [1604, 520], 'cream') +
    leader(at(3260, -1185), [1604, 740], 'dark green') +
    leader(at(3180, -760), [1604, 930], 'light green') +
    pointer([at(1200, -2700), at(1200, -2170)])
  );
}
