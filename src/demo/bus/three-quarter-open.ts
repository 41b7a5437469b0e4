import { edge, fine, flat, gleam, shade, tint, within } from '../ink.ts';
import { box, disc, line, outline, type Point, spread } from '../shape.ts';
import { interior } from './interior.ts';
import { nose } from './nose.ts';
import { busSide, FINISHED, WHEEL_RADIUS, WHEELBASE, wheel } from './side.ts';
import { onSide, type Place, slant } from './slant.ts';

/** Across the body, in millimetres. */
const WIDTH = 1720;

const OPENING = box([480, -1960], [840, 1590], 60);

/** As it stands in the yard: side door open, step down. */
export function threeQuarterOpen(): string {
  return (
    ground() +
    farWheels() +
    nose(WIDTH) +
    roof() +
    onSide(0, busSide(FINISHED)) +
    onSide(0, flat(OPENING, '#4a4f4a')) +
    insideOpening() +
    onSide(0, edge(OPENING)) +
    step() +
    openDoor()
  );
}

function face(fill: string, ...places: Place[]): string {
  return edge(outline(...places.map(slant)), fill);
}

function ground(): string {
  const shadow = outline(
    slant([-980, -200, 0]),
    slant([3560, -200, 0]),
    slant([3500, WIDTH, 0]),
    slant([-980, WIDTH, 0]),
  );
  return flat(box([110, 110], [1780, 1220]), tint.dust) + shade(shadow, 0.13);
}

function farWheels(): string {
  return (
    onSide(WIDTH - 180, wheel([0, -WHEEL_RADIUS])) +
    onSide(
      240,
      flat(disc([0, -WHEEL_RADIUS], WHEEL_RADIUS), '#3a3f44') +
        flat(disc([WHEELBASE, -WHEEL_RADIUS], WHEEL_RADIUS), '#3a3f44'),
    )
  );
}

function roof(): string {
  const top: readonly (readonly [number, number])[] = [
    [-440, 2110],
    [200, 2136],
    [1000, 2148],
    [1800, 2146],
    [2600, 2130],
    [2960, 2120],
    [3060, 2108],
    [3150, 2086],
    [3230, 2054],
    [3290, 2012],
    [3330, 1960],
  ];
  const near = top.map(([x, z]) => slant([x, 0, z]));
  const far = top
    .slice(0, -3)
    .map(([x, z]) => slant([x, WIDTH, z]))
    .reverse();
  const band = (from: number, to: number): Point[] => [
    ...top.slice(0, 6).map(([x, z]) => slant([x, from, z])),
    ...top
      .slice(0, 6)
      .map(([x, z]) => slant([x, to, z]))
      .reverse(),
  ];
  return (
    fine(outline(...near, ...far), '#f6ebc8') +
    edge(line(...far)) +
    gleam(outline(...band(500, 900)), 0.4)
  );
}

function insideOpening(): string {
  const clip = outline(
    ...(
      [
        [490, 0, 375],
        [1310, 0, 375],
        [1310, 0, 1950],
        [490, 0, 1950],
      ] as const
    ).map((place) => slant(place)),
  );
  return within(clip, 'doorway', interior());
}

function step(): string {
  const tread: Place[] = [
    [560, -40, 215],
    [1240, -40, 215],
    [1240, -330, 215],
    [560, -330, 215],
  ];
  const riser: Place[] = [
    [560, -330, 215],
    [1240, -330, 215],
    [1240, -330, 165],
    [560, -330, 165],
  ];
  const side: Place[] = [
    [560, -40, 215],
    [560, -330, 215],
    [560, -330, 165],
    [560, -40, 165],
  ];
  const hanger = (x: number): string => edge(line(slant([x, -60, 215]), slant([x, 0, 360])));
  return (
    hanger(600) +
    hanger(1200) +
    face(tint.steel, ...tread) +
    face(tint.steelDark, ...riser) +
    face(tint.steelDark, ...side) +
    fine(
      spread(640, 1160, 6)
        .map((x) => line(slant([x, -60, 215]), slant([x, -310, 215])))
        .join(''),
    )
  );
}

/** The door swung forward on its front hinges, its inner side towards us. */
function openDoor(): string {
  const reach = (along: number, z: number): Place => [480 - along * 0.93, -along * 0.37 - 20, z];
  const panel = outline(
    slant(reach(0, 370)),
    slant(reach(840, 370)),
    slant(reach(840, 1960)),
    slant(reach(0, 1960)),
  );
  const pane = outline(
    slant(reach(90, 1260)),
    slant(reach(750, 1260)),
    slant(reach(750, 1870)),
    slant(reach(90, 1870)),
  );
  const pocket = outline(
    slant(reach(120, 520)),
    slant(reach(720, 520)),
    slant(reach(720, 1080)),
    slant(reach(120, 1080)),
  );
  return (
    edge(panel, FINISHED.upper) +
    fine(pocket, '#dfe3c8') +
    edge(pane, tint.glass) +
    gleam(
      outline(
        slant(reach(200, 1260)),
        slant(reach(380, 1260)),
        slant(reach(520, 1870)),
        slant(reach(340, 1870)),
      ),
      0.4,
    ) +
    fine(line(slant(reach(690, 1160)), slant(reach(800, 1160))))
  );
}
