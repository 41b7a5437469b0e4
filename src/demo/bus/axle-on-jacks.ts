import { leader, pointer } from '../dimension.ts';
import { axis, edge, fine, flat, gleam, scaled, shade, tint } from '../ink.ts';
import { box, disc, line, outline, type Point, spread } from '../shape.ts';
import { block, groundShadow, lyingBar, standingBar } from '../solid.ts';
import { AS_FOUND } from './side.ts';

const MIDDLE = 1000;
const GROUND = 1300;
const FLOOR = 850;
const AXLE = 1140;
/** Half the distance between the springs. */
const SPRING = 206;

/** The tail on stands, the axle on its way up to the springs. */
export function axleOnJacks(): string {
  return (
    flat(box([110, 96], [1780, GROUND - 96]), tint.dust) +
    fine(line([90, GROUND], [1910, GROUND])) +
    groundShadow([MIDDLE, GROUND + 2], 520) +
    stand(-350) +
    stand(350) +
    scaled([MIDDLE, FLOOR], 0.4, tail()) +
    springs() +
    axle() +
    jack(-SPRING) +
    jack(SPRING) +
    lifting() +
    names()
  );
}

/** The body from behind, in millimetres, y = 0 at its lower edge. */
function tail(): string {
  const shell =
    'M-840 0Q-870 0 -870 -60V-900Q-870 -1120 -800 -1520Q-760 -1760 -560 -1780Q0 -1830 560 -1780Q760 -1760 800 -1520Q870 -1120 870 -900V-60Q870 0 840 0Z';
  const lamp = (x: number): string =>
    edge(box([x, -620], [110, 230], 30), tint.red) +
    fine(line([x, -500], [x + 110, -500])) +
    gleam(box([x + 18, -600], [22, 90], 10), 0.5);
  const doors =
    edge(box([-520, -860], [1040, 770], 40), AS_FOUND.lower) +
    edge(line([0, -860], [0, -90])) +
    fine(box([-440, -420], [880, 180], 16)) +
    fine(line([0, -420], [0, -240])) +
    edge(box([34, -700], [110, 36], 16), tint.steelLight);
  const hinges = [-700, -230]
    .map(
      (y) =>
        edge(box([-556, y], [60, 60], 10), tint.steelDark) +
        edge(box([496, y], [60, 60], 10), tint.steelDark),
    )
    .join('');
  const glass =
    edge(box([-560, -1560], [1120, 560], 110), tint.glass) +
    gleam('M-420 -1550H-180L-380 -1010H-540V-1240Z', 0.4) +
    fine(box([-590, -1590], [1180, 620], 130));
  return (
    edge(shell, AS_FOUND.upper) +
    flat('M-868 -900V-60Q-868 -4 -840 -4H840Q868 -4 868 -60V-900Z', AS_FOUND.lower) +
    edge(shell) +
    fine(line([-868, -900], [868, -900])) +
    shade(box([-840, -60], [1680, 56]), 0.14) +
    glass +
    doors +
    hinges +
    lamp(-770) +
    lamp(660) +
    fine(box([-130, -330], [260, 70], 8), tint.paper)
  );
}

/** Leaf packs seen from their ends, hanging from the hangers. */
function springs(): string {
  const pack = (x: number): string =>
    standingBar([x - 22, FLOOR], [44, 40], tint.steelDark) +
    spread(0, 4, 5)
      .map((index) => edge(box([x - 34, FLOOR + 38 + index * 14], [68, 14]), tint.steelLight))
      .join('');
  return pack(MIDDLE - SPRING) + pack(MIDDLE + SPRING);
}

function axle(): string {
  const tube = lyingBar([MIDDLE - 290, AXLE - 24], [580, 48], tint.greenDark);
  const drum = (x: number): string => lyingBar([x, AXLE - 76], [56, 152], tint.iron, 8);
  const shell = outline(
    [MIDDLE - 112, AXLE - 26],
    [MIDDLE - 56, AXLE - 74],
    [MIDDLE + 56, AXLE - 74],
    [MIDDLE + 112, AXLE - 26],
    [MIDDLE + 112, AXLE + 26],
    [MIDDLE + 56, AXLE + 74],
    [MIDDLE - 56, AXLE + 74],
    [MIDDLE - 112, AXLE + 26],
  );
  const bolts = spread(0, 315, 8)
    .map((bearing) =>
      fine(
        disc(
          [
            MIDDLE + 54 * Math.cos((bearing * Math.PI) / 180),
            AXLE + 54 * Math.sin((bearing * Math.PI) / 180),
          ],
          6,
        ),
        tint.steelLight,
      ),
    )
    .join('');
  const pad = (x: number): string => block([x - 40, AXLE - 42], [80, 20], tint.steelDark, 3);
  return (
    tube +
    edge(shell, tint.greenDark) +
    edge(disc([MIDDLE, AXLE], 68), tint.green) +
    bolts +
    fine(disc([MIDDLE, AXLE], 36)) +
    drum(MIDDLE - 338) +
    drum(MIDDLE + 282) +
    pad(MIDDLE - SPRING) +
    pad(MIDDLE + SPRING)
  );
}

function jack(offset: number): string {
  const x = MIDDLE + offset;
  return (
    standingBar([x - 16, AXLE + 24], [32, 60], tint.steelLight) +
    standingBar([x - 38, AXLE + 70], [76, 74], tint.red, 8) +
    block([x - 70, AXLE + 140], [140, 24], tint.red, 4)
  );
}

/** A stand under the jacking point: ratchet bar on four legs. */
function stand(offset: number): string {
  const x = MIDDLE + offset;
  const legs = outline(
    [x - 26, 1090],
    [x + 26, 1090],
    [x + 84, GROUND],
    [x + 56, GROUND],
    [x + 14, 1150],
    [x - 14, 1150],
    [x - 56, GROUND],
    [x - 84, GROUND],
  );
  return (
    standingBar([x - 16, FLOOR + 16], [32, 240], tint.steel) +
    block([x - 42, FLOOR - 2], [84, 22], tint.steelDark, 4) +
    edge(legs, tint.blue) +
    edge(line([x - 42, 1236], [x + 42, 1236]))
  );
}

function lifting(): string {
  const up = (x: number): string =>
    pointer([
      [x, AXLE - 44],
      [x, FLOOR + 122],
    ]);
  return up(MIDDLE - SPRING) + up(MIDDLE + SPRING) + axis(line([MIDDLE, 120], [MIDDLE, 1250]));
}

function names(): string {
  const at = (x: number, y: number): Point => [MIDDLE + x, y];
  return (
    leader(at(350, 990), [1490, 1000], 'axle stand') +
    leader(at(SPRING + 24, FLOOR + 70), [1490, 880], 'leaf spring') +
    leader(at(306, AXLE + 40), [1490, 1130], 'brake drum') +
    leader(at(SPRING + 20, AXLE + 108), [1490, 1240], 'jack')
  );
}
