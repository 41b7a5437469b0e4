import { leader, pointer } from '../dimension.ts';
import { cut, edge, flat, moved, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, type Point, polar } from '../shape.ts';
import { bend, sheetMetal } from '../sheet-metal.ts';

const PANEL: Point = [876, 606];
const FLOOR = 470;
const EDGE = 640;
const SHEET = 30;
/** How far the hem has been turned over after each pass, in degrees; 0 is still upright. */
const TURNS = [0, 45, 70, 90] as const;

/** Four passes from an upright edge to a flat hem. */
export function doorSkinHem(): string {
  const corners: readonly Point[] = [
    [104, 92],
    [1020, 92],
    [104, 738],
    [1020, 738],
  ];
  return (
    TURNS.map((turn, index) => moved(corners[index] ?? [0, 0], pass(turn, index + 1))).join('') +
    names()
  );
}

function pass(turn: number, number: number): string {
  const frame = cut(
    sheetMetal(
      [
        [60, 130],
        [330, 130],
        [370, 170],
        [400, 440 - SHEET - 1],
        [EDGE - 44, 440 - SHEET - 1],
      ],
      SHEET,
    ),
    tint.iron,
    'left',
  );
  const badge =
    edge(disc([74, 536], 38), tint.paper) +
    lettering(String(number), [74, 556], { size: 40, anchor: 'middle', halo: 'none' });
  return (
    flat(box([0, 0], PANEL), tint.dust) + frame + cut(skin(turn), tint.green) + blow(turn) + badge
  );
}

/** Outer skin from the left, round the bend, and up as far as it has been turned. */
function skin(turn: number): string {
  const radius = turn === 90 ? 30 : 32;
  const centre: Point = [EDGE, FLOOR - 28 - radius];
  const round = bend(centre, radius, [90, -turn]);
  const last = round.at(-1) ?? centre;
  return sheetMetal(
    [[60, FLOOR - 28], [EDGE - 20, FLOOR - 28], ...round, polar(last, 190, -90 - turn)],
    SHEET,
  );
}

/** Which way the tool goes. */
function blow(turn: number): string {
  if (turn === 0) return '';
  const bearing = -38 - turn / 2;
  const centre: Point = [EDGE, FLOOR - 130];
  return pointer([polar(centre, 310, bearing), polar(centre, 96, bearing)]);
}

function names(): string {
  return (
    leader([104 + 350, 92 + 150], [104 + 470, 92 + 90], 'door frame') +
    leader([104 + 200, 92 + FLOOR - 28], [104 + 260, 92 + FLOOR + 90], 'outer skin') +
    leader([104 + EDGE + 32, 92 + 300], [104 + EDGE + 70, 92 + 200], 'hem')
  );
}
