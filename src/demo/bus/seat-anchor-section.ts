import { leader } from '../dimension.ts';
import { axis, cut, edge, fine, flat, shade, tint } from '../ink.ts';
import { box, line, outline, type Point, spread } from '../shape.ts';
import { block, standingBar } from '../solid.ts';

/** Upper sides of the layers, from the seat down. */
const [FOOT, PLATE, FLOOR, RIB, SPREADER, UNDER] = [430, 482, 552, 580, 930, 1000];
const BOLT = 1000;

/** One of four anchorages, cut through its bolt. */
export function seatAnchorSection(): string {
  return (
    flat(box([110, 96], [1780, 1236]), tint.dust) + rib() + layers() + leg() + bolt() + names()
  );
}

/** A channel: two flanges and the web behind. */
function rib(): string {
  const web =
    edge(box([110, RIB + 28], [1780, SPREADER - RIB - 56]), tint.steelLight) +
    shade(box([110, RIB + 31], [1780, 34]), 0.12);
  const flanges =
    cut(box([110, RIB], [1780, 28]), '#d8bb88') +
    cut(box([110, SPREADER - 28], [1780, 28]), '#d8bb88');
  const swages = [300, 1500].map((x) => fine(box([x, RIB + 100], [220, 150], 60))).join('');
  return web + swages + flanges;
}

function layers(): string {
  const weld = (x: number, side: 1 | -1): string =>
    flat(outline([x, FLOOR], [x + side * 40, FLOOR], [x, FLOOR - 40]), tint.ink);
  return (
    cut(box([110, FLOOR], [1780, 28]), tint.green, 'left') +
    cut(box([560, PLATE], [880, FLOOR - PLATE]), tint.steel) +
    weld(560, -1) +
    weld(1440, 1) +
    cut(box([560, SPREADER], [880, UNDER - SPREADER]), tint.steel)
  );
}

/** Square tube on a foot plate, both cut. */
function leg(): string {
  const tube = box([640, 96], [180, FOOT - 96]);
  const hollow = box([668, 96], [124, FOOT - 96]);
  return (
    cut(tube + hollow, tint.iron) +
    flat(box([670, 98], [120, FOOT - 100]), tint.paper) +
    cut(box([600, FOOT], [560, PLATE - FOOT]), tint.iron, 'left')
  );
}

/** Head, washer, shank through everything, crush tube, washer, nut. */
function bolt(): string {
  const threads = spread(UNDER + 30, UNDER + 190, 14)
    .map((y) => line([BOLT - 34, y + 7], [BOLT + 34, y - 3]))
    .join('');
  const hexagon = (y: number): string =>
    standingBar([BOLT - 86, y], [172, 78], tint.steel, 8) +
    fine(
      line([BOLT - 42, y + 3], [BOLT - 42, y + 75]) + line([BOLT + 42, y + 3], [BOLT + 42, y + 75]),
    );
  const tube =
    cut(box([BOLT - 78, RIB + 28], [40, SPREADER - RIB - 56]), tint.brass) +
    cut(box([BOLT + 38, RIB + 28], [40, SPREADER - RIB - 56]), tint.brass, 'left');
  const shank =
    tube +
    standingBar([BOLT - 38, FOOT - 20], [76, UNDER - FOOT + 220], tint.steelLight, 8) +
    fine(threads);
  return (
    shank +
    block([BOLT - 120, FOOT - 24], [240, 24], tint.steelDark) +
    hexagon(FOOT - 102) +
    block([BOLT - 120, UNDER], [240, 24], tint.steelDark) +
    hexagon(UNDER + 24) +
    axis(line([BOLT, 250], [BOLT, 1290]))
  );
}

function names(): string {
  const right = (target: Point, y: number, text: string): string => leader(target, [1510, y], text);
  return (
    leader([654, 200], [520, 180], 'seat leg') +
    leader([620, FOOT + 26], [480, 330], 'foot') +
    right([BOLT + 60, FOOT - 60], 200, 'bolt') +
    right([1390, PLATE + 34], 380, 'anchor plate') +
    right([1480, FLOOR + 14], 480, 'floor sheet') +
    right([1480, SPREADER - 14], 1060, 'rib 5') +
    right([1390, SPREADER + 36], 1160, 'spreader plate') +
    leader([BOLT - 60, 760], [480, 1150], 'crush tube')
  );
}
