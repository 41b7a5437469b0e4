import { edge, fine, flat, gleam, moved, shade, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, gear, line, outline, type Point, polar, ring, spread } from '../shape.ts';
import { handwheel, lyingBar, standingBar } from '../solid.ts';

const TRAY: Point = [870, 600];

/** Four of the numbered trays from above; each scene inside is drawn from the tray's own corner. */
export function partsTray(): string {
  return (
    moved([104, 92], tray(5) + slottedScrews()) +
    moved([1026, 92], tray(6) + gears()) +
    moved([104, 744], tray(7) + crankWheel()) +
    moved([1026, 744], tray(8) + gibStrip())
  );
}

function tray(number: number): string {
  const [width, height] = TRAY;
  const floor = box([34, 34], [width - 68, height - 68], 18);
  return (
    shade(box([14, 16], TRAY, 34), 0.12) +
    edge(box([0, 0], TRAY, 34), tint.steelDark) +
    fine(floor, tint.steelLight) +
    shade(box([36, 36], [width - 72, 26], 14), 0.16) +
    shade(box([36, 60], [24, height - 98]), 0.1) +
    edge(box([66, height - 138], [92, 86], 4), tint.cream) +
    lettering(String(number), [112, height - 70], { size: 50, anchor: 'middle', halo: 'none' })
  );
}

function slottedScrews(): string {
  return [270, 470, 670]
    .map(
      (x, index) =>
        slottedScrew([x, 88], 112 + index * 14) + slottedScrew([x, 340], 112 + index * 14),
    )
    .join('');
}

/** A cheese-head screw standing on its point: head above, slot across it. */
function slottedScrew([x, y]: Point, length: number): string {
  const threads = spread(y + 66, y + 46 + length, 9).map((at) =>
    line([x - 18, at], [x + 18, at - 8]),
  );
  return (
    shade(box([x - 8, y + 14], [50, length + 44]), 0.1) +
    standingBar([x - 18, y + 44], [36, length + 8], tint.steel, 4) +
    fine(threads.join('')) +
    standingBar([x - 42, y], [84, 48], tint.steel, 8) +
    edge(box([x - 8, y], [16, 20]), tint.rubber)
  );
}

function gears(): string {
  return (
    spurGear([300, 250], 182, 38) + spurGear([640, 214], 130, 27) + spurGear([560, 452], 86, 18)
  );
}

function spurGear(centre: Point, radius: number, teeth: number): string {
  const [x, y] = centre;
  const depth = 19;
  const hub = radius * 0.36;
  const keyway = box([x - 8, y - hub * 0.72], [16, hub * 0.4]);
  return (
    flat(gear([x + 10, y + 12], { radius, teeth, depth }), tint.ink, 0.13) +
    edge(gear(centre, { radius, teeth, depth }), tint.steel) +
    fine(disc(centre, radius - depth - 16)) +
    shade(disc(centre, radius - depth - 16) + disc(centre, hub + 8), 0.1) +
    edge(disc(centre, hub), tint.steelLight) +
    edge(disc(centre, hub * 0.5), tint.rubber) +
    flat(keyway, tint.rubber)
  );
}

function crankWheel(): string {
  const centre: Point = [470, 300];
  return (
    shade(ring([484, 316], 218, 160), 0.13) + handwheel(centre, 218, -38) + nutAndWasher([766, 300])
  );
}

function nutAndWasher([x, y]: Point): string {
  const hexagon = outline(
    ...[0, 60, 120, 180, 240, 300].map((bearing) => polar([x, y + 110], 40, bearing)),
  );
  const washer =
    shade(disc([x + 8, y - 90], 42), 0.13) + edge(ring([x, y - 100], 42, 19), tint.steel);
  return (
    washer +
    shade(disc([x + 8, y + 120], 40), 0.13) +
    edge(hexagon, tint.steel) +
    fine(disc([x, y + 110], 33)) +
    edge(disc([x, y + 110], 18), tint.rubber)
  );
}

function gibStrip(): string {
  const strip =
    shade(box([104, 172], [700, 74]), 0.12) +
    edge(box([92, 158], [700, 74], 3), tint.iron) +
    gleam(box([96, 162], [692, 16]), 0.35);
  const places = spread(180, 704, 4);
  const dimples = places
    .map((x) => fine(disc([x, 196], 17), tint.ironLight) + flat(disc([x, 196], 6), tint.ink))
    .join('');
  return strip + dimples + [250, 410, 570, 730].map((x) => gibScrew([x, 330])).join('');
}

/** A set screw with its lock nut, point upwards. */
function gibScrew([x, y]: Point): string {
  const threads = spread(y + 26, y + 134, 10).map((at) => line([x - 15, at], [x + 15, at - 7]));
  return (
    standingBar([x - 8, y], [16, 20], tint.steel, 6) +
    standingBar([x - 15, y + 16], [30, 124], tint.steel, 4) +
    fine(threads.join('')) +
    lyingBar([x - 36, y + 74], [72, 34], tint.brass, 5) +
    fine(line([x - 14, y + 76], [x - 14, y + 106]) + line([x + 14, y + 76], [x + 14, y + 106]))
  );
}
