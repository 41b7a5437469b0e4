import { dimension, leader } from '../dimension.ts';
import { axis, cut, edge, fine, flat, hidden, moved, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, line, outline, type Point, polar } from '../shape.ts';
import { block, lyingBar } from '../solid.ts';
import { dialIndicator, dialStand } from './dial.ts';

const BED_TOP = 1020;
const CENTRE = 560;
const FOOT_LEFT = 220;
const FOOT = 576;
const FOIL = 28;
/** Foil of 28 px under 576 px of foot turns the headstock by this; all three angles share one exaggeration. */
const TURN = (Math.asin(FOIL / FOOT) * 180) / Math.PI;
const DROOP = TURN * (35 / 44);
const NOSE: Point = [880, CENTRE];

/** Why a strip of foil under the nose end lifts the far end of a test bar. */
export function foilUnderFoot(): string {
  return (
    bed() +
    foil() +
    moved([FOOT_LEFT, BED_TOP], headstock(), { turn: -TURN }) +
    spindle() +
    bar() +
    reader() +
    sizes()
  );
}

function bed(): string {
  return (
    flat(box([110, 96], [1780, 924]), tint.dust) +
    cut(box([110, BED_TOP], [1780, 150]), tint.ironLight) +
    axis(line([140, CENTRE], [1740, CENTRE]))
  );
}

function foil(): string {
  return edge(box([FOOT_LEFT + FOOT - 150, BED_TOP - FOIL + 3], [150, FOIL - 3]), tint.brass);
}

/** The casting in section, from the left end of its foot: base, two bearing walls, caps. */
function headstock(): string {
  const walls = outline(
    [0, 0],
    [0, -640],
    [170, -640],
    [170, -110],
    [406, -110],
    [406, -640],
    [FOOT, -640],
    [FOOT, 0],
  );
  const cap = (x: number): string => block([x + 12, -690], [146, 52], tint.greenDark, 8);
  return cut(walls, tint.green, 'left') + cap(0) + cap(406);
}

/** Spindle and bearings point where the bore points: the droop undone by a little more than itself. */
function spindle(): string {
  const bush = (x: number): string => cut(box([x, -86], [150, 172]), tint.brass);
  const step = (x: number, radius: number): string =>
    lyingBar([x, -radius], [72, 2 * radius], tint.steel, 6);
  const body =
    lyingBar([-700, -58], [730, 116], tint.steelLight) +
    lyingBar([-80, -92], [44, 184], tint.steel, 6) +
    lyingBar([-36, -70], [66, 140], tint.steel, 6);
  return moved(
    NOSE,
    bush(-652) + bush(-246) + body + step(-476, 168) + step(-404, 132) + step(-332, 98),
    { turn: DROOP - TURN },
  );
}

/** The test bar now, and dashed where it pointed as found. */
function bar(): string {
  const before = outline([30, -34], [760, -34], [760, 34], [30, 34]);
  const tapered = edge(outline([30, -44], [64, -38], [64, 38], [30, 44]), tint.steelLight);
  return (
    moved(NOSE, hidden(before), { turn: DROOP }) +
    moved(NOSE, tapered + lyingBar([64, -34], [696, 68], tint.steelLight, 6), {
      turn: DROOP - TURN,
    }) +
    moved(NOSE, hidden(before), { turn: DROOP })
  );
}

function reader(): string {
  const [, touchY] = polar(NOSE, 690, DROOP - TURN);
  return (
    block([1420, 920], [440, 100], tint.greenDark, 8) +
    block([1500, 862], [330, 60], tint.steel) +
    dialStand([1730, 862], { armY: 300, armTo: 1650 }) +
    block([1630, 266], [44, 68], tint.steelDark, 6) +
    dialIndicator([1570, 300], { radius: 118, touchY: touchY - 34, needle: -112, marking: '1 µm' })
  );
}

function sizes(): string {
  return (
    dimension([FOOT_LEFT, BED_TOP + 156], [FOOT_LEFT + FOOT, BED_TOP + 156], {
      text: '180 mm',
      offset: -90,
    }) +
    dimension([930, CENTRE + 66], [1570, CENTRE + 66], { text: '200 mm', offset: -90 }) +
    leader([FOOT_LEFT + FOOT - 30, BED_TOP - 12], [900, 900], 'foil 0.04 mm') +
    lettering('(not to scale)', [940, 966], { size: 32 }) +
    leader([1120, CENTRE - 22], [1060, 420], 'with foil') +
    leader([1628, CENTRE + 60], [1560, 790], 'as found') +
    fine(line([110, 1170], [110, 1020]))
  );
}
