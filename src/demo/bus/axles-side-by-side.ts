import { axis, edge, fine, flat, shade, tint } from '../ink.ts';
import { dialIndicator } from '../lathe/dial.ts';
import { lettering } from '../lettering.ts';
import { box, disc, gear, line, outline, type Point, polar, ring } from '../shape.ts';
import { block, lyingBar } from '../solid.ts';

const MIDDLE = 1000;
const CROWN = 104;

/** Both rear axles on the same two timbers, each read at its crown wheel; 1 turn of the needle is 1 mm. */
export function axlesSideBySide(): string {
  return (
    flat(box([110, 84], [1780, 1246]), tint.dust) +
    timber(420) +
    timber(1480) +
    axle(500, { paint: '#8d7f74', rusty: true }) +
    axle(1140, { paint: tint.greenDark, rusty: false }) +
    reading(500, 0.41, 'ours') +
    reading(1140, 0.14, "donor's")
  );
}

function timber(x: number): string {
  return (
    shade(box([x + 16, 250], [100, 1060]), 0.12) +
    edge(box([x, 236], [100, 1060]), tint.wood) +
    fine(
      line([x + 24, 240], [x + 28, 760], [x + 20, 1292]) +
        line([x + 70, 240], [x + 64, 700], [x + 74, 1292]),
    )
  );
}

function axle(y: number, { paint, rusty }: { paint: string; rusty: boolean }): string {
  const tube = (x: number): string => lyingBar([x, y - 42], [500, 84], paint);
  const pad = (x: number): string =>
    block([x - 70, y - 60], [140, 120], tint.steelDark, 6) + edge(disc([x, y], 12), tint.rubber);
  const hub = (side: 1 | -1): string => {
    const at = (from: number, width: number, height: number): string =>
      lyingBar(
        [side === 1 ? MIDDLE + from : MIDDLE - from - width, y - height / 2],
        [width, height],
        tint.steel,
        8,
      );
    return at(700, 24, 230) + at(724, 84, 204) + at(808, 22, 96) + at(830, 34, 54);
  };
  const shell = outline(
    [MIDDLE - 260, y - 44],
    [MIDDLE - 120, y - 126],
    [MIDDLE + 120, y - 126],
    [MIDDLE + 260, y - 44],
    [MIDDLE + 260, y + 44],
    [MIDDLE + 120, y + 126],
    [MIDDLE - 120, y + 126],
    [MIDDLE - 260, y + 44],
  );
  return (
    shade(box([250, y + 52], [1500, 26], 12), 0.12) +
    tube(200 + 100) +
    tube(1200) +
    hub(1) +
    hub(-1) +
    pad(560) +
    pad(1440) +
    edge(shell, paint) +
    crownWheel([MIDDLE, y], rusty)
  );
}

/** Cover off: bolt ring, crown wheel and the spider in it. */
function crownWheel(centre: Point, rusty: boolean): string {
  const bolts = Array.from({ length: 10 }, (_, index) =>
    fine(disc(polar(centre, 143, index * 36 + 18), 9), tint.steelLight),
  ).join('');
  return (
    edge(disc(centre, 160), rusty ? '#75695f' : '#4f6f57') +
    bolts +
    edge(disc(centre, 124), '#3c4146') +
    edge(gear(centre, { radius: CROWN, teeth: 34, depth: 15 }), rusty ? '#c2a68d' : tint.steel) +
    fine(ring(centre, 74, 40), tint.steelLight) +
    fine(disc(centre, 18), tint.steelDark) +
    axis(line([centre[0] - 190, centre[1]], [centre[0] + 190, centre[1]]))
  );
}

function reading(y: number, millimetres: number, whose: string): string {
  const top = y - CROWN;
  const dial = dialIndicator([MIDDLE, y - 302], {
    radius: 118,
    touchY: top,
    needle: -90 + millimetres * 360,
    marking: 'mm',
  });
  return (
    dial +
    lettering(`${millimetres.toFixed(2)} mm`, [MIDDLE + 170, y - 290], { size: 60 }) +
    lettering(whose, [MIDDLE - 170, y - 290], { size: 60, anchor: 'end' })
  );
}
