import { balloon } from '../dimension.ts';
import { edge, fine, flat, ghost, moved, scaled, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, type Point } from '../shape.ts';
import { groundShadow } from '../solid.ts';
import { AS_FOUND, busSide, DONOR, WHEELBASE } from './side.ts';

/** 1:4, the scale that the coarse hatching is made for. */
const SCALE = 0.25;
const STAYS: Point = [1080, 650];
const GIVES: Point = [1080, 1256];

/** Both buses from the right; what the second one gives is hatched. */
export function twoBuses(): string {
  const stays = fromRight(STAYS, busSide({ ...AS_FOUND, sideDoor: false }));
  const gives = fromRight(
    GIVES,
    busSide({ ...DONOR, sideDoor: false, crashed: true, paneMark: given }) +
      inside() +
      noseBefore(),
  );
  return (
    flat(box([110, 90], [1260, 560]), tint.dust) +
    flat(box([110, 696], [1260, 560]), tint.dust) +
    road(STAYS) +
    road(GIVES) +
    stays +
    gives +
    names()
  );
}

function fromRight(origin: Point, marks: string): string {
  return moved(origin, scaled([0, 0], SCALE, marks), { mirror: true });
}

function road([, y]: Point): string {
  return fine(line([110, y], [1370, y])) + groundShadow([750, y + 2], 570);
}

function given(d: string): string {
  return `<path d="${d}" fill="url(#hatch-coarse)" fill-rule="evenodd"/>`;
}

/** Rear axle, gearbox, five ribs and heater, where they sit. */
function inside(): string {
  const axle = disc([WHEELBASE, -320], 96);
  const gearbox = 'M420 -860H560L660 -760H1040V-540H420Z';
  const ribs = [-660, 560, 900, 1240, 1700].map((x) => box([x, -400], [110, 110])).join('');
  const heater = box([-560, -1000], [230, 220], 20);
  return [axle, gearbox, ribs, heater]
    .map((d) => flat(d, tint.cream) + given(d) + edge(d))
    .join('');
}

/** Where the nose and the post stood before the blow. */
function noseBefore(): string {
  return ghost(
    'M-840 -340L-872 -620C-884 -800 -884 -1000 -868 -1180L-720 -1840C-690 -1990 -600 -2090 -440 -2110',
  );
}

function at(x: number, y: number): Point {
  return [GIVES[0] - x * SCALE, GIVES[1] + y * SCALE];
}

function names(): string {
  const below = (x: number): Point => [at(x, 0)[0], GIVES[1] + 76];
  const list = ['glass', 'heater', 'gearbox', 'five ribs', 'rear axle'].map((text, index) =>
    lettering(`${index + 1}  ${text}`, [1560, 820 + index * 76], { size: 44 }),
  );
  return (
    lettering('stays', [1560, 330], { size: 64 }) +
    lettering('gives', [1560, 720], { size: 64 }) +
    list.join('') +
    balloon(at(100, -1560), [1450, at(0, -1800)[1]], 1) +
    balloon(at(-450, -880), [1450, at(0, -1080)[1]], 2) +
    balloon(at(760, -620), below(760), 3) +
    balloon(at(1295, -345), below(1295), 4) +
    balloon(at(WHEELBASE, -320), below(WHEELBASE), 5)
  );
}
