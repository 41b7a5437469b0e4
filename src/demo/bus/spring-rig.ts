import { leader, pointer } from '../dimension.ts';
import { edge, fine, flat, gleam, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, type Point, ring, spread } from '../shape.ts';
import { block, lyingBar, standingBar } from '../solid.ts';

const [LEFT, RIGHT, FLOOR, LID] = [170, 1830, 1250, 190];
const EYE_Y = 1090;
const CROWN_Y = 790;

/** The spring upside down in its frame, pressed by a jack that stands on a scale. */
export function springRig(): string {
  return (
    flat(box([110, 100], [1780, 1236]), tint.dust) + frame() + spring() + jack() + rule() + names()
  );
}

function frame(): string {
  const channel = (y: number): string =>
    lyingBar([LEFT - 40, y], [RIGHT - LEFT + 80, 96], tint.green, 4) +
    fine(
      line([LEFT - 36, y + 22], [RIGHT + 36, y + 22]) +
        line([LEFT - 36, y + 74], [RIGHT + 36, y + 74]),
    );
  const post = (x: number): string =>
    standingBar([x, LID + 96], [84, FLOOR - LID - 96], tint.green) +
    fine(
      line([x + 20, LID + 100], [x + 20, FLOOR - 4]) +
        line([x + 64, LID + 100], [x + 64, FLOOR - 4]),
    );
  const bolts = [LEFT + 2, RIGHT - 2]
    .flatMap((x) => [LID + 48, FLOOR + 48].map((y) => edge(disc([x, y], 18), tint.steel)))
    .join('');
  const stop = (x: number): string => block([x, FLOOR - 120], [60, 120], tint.steelDark, 4);
  return (
    post(LEFT - 40) +
    post(RIGHT - 44) +
    channel(LID) +
    channel(FLOOR) +
    bolts +
    stop(300) +
    stop(1640)
  );
}

/** Six leaves, the main one longest and lowest, since it is upside down. */
function spring(): string {
  const leaf = (index: number): string => {
    const reach = 590 - index * 88;
    const y = CROWN_Y - index * 34;
    const sag = (EYE_Y - CROWN_Y) * (reach / 590) ** 2;
    const curve = (lift: number): string => `${1000 - reach} ${y + sag + lift}`;
    return edge(
      `M${curve(0)}Q1000 ${y - sag} ${1000 + reach} ${y + sag}L${1000 + reach} ${y + sag + 32}Q1000 ${y - sag + 32} ${curve(32)}Z`,
      index === 5 ? tint.steelLight : tint.steel,
    );
  };
  const eye = (x: number): string =>
    edge(ring([x, EYE_Y + 66], 58, 28), tint.steel) +
    fine(disc([x, EYE_Y + 66], 28), tint.rubber) +
    block([x - 70, EYE_Y + 124], [140, 36], tint.steelDark, 6);
  const leaves = [5, 4, 3, 2, 1, 0].map(leaf).join('');
  const clip = (x: number, y: number): string => block([x - 18, y], [36, 130], tint.steelDark, 6);
  return (
    eye(410) +
    eye(1590) +
    leaves +
    clip(760, 716) +
    clip(1240, 716) +
    block([940, 590], [120, 250], tint.steelDark, 6)
  );
}

/** Bottom to top: saddle, platform of the scale, jack, ram against the lid. */
function jack(): string {
  const y = 590;
  return (
    block([800, y - 56], [400, 56], tint.rubber, 8) +
    edge(box([836, y - 74], [328, 20], 4), tint.steel) +
    standingBar([934, y - 214], [132, 140], tint.red, 10) +
    standingBar([960, LID + 120], [80, y - 214 - LID - 120], tint.steelLight) +
    block([930, LID + 96], [140, 30], tint.steelDark, 4) +
    lyingBar([1064, y - 128], [70, 26], tint.steel, 4) +
    lyingBar([1130, y - 124], [330, 18], tint.steelDark, 8)
  );
}

/** The steel rule at the right eye. */
function rule(): string {
  const [x, top] = [1700, 720];
  const ticks = spread(top + 24, FLOOR - 24, 26)
    .map((y, index) => line([x, y], [x + (index % 5 === 0 ? 34 : 18), y]))
    .join('');
  return (
    edge(box([x, top], [62, FLOOR - top]), tint.steelLight) +
    fine(ticks) +
    gleam(box([x + 40, top + 6], [10, FLOOR - top - 12]), 0.5) +
    fine(line([1654, EYE_Y + 66], [1700, EYE_Y + 66]))
  );
}

function names(): string {
  const arrowFrom: Point = [1000, 880];
  return (
    pointer([arrowFrom, [1000, 1010]]) +
    leader([1014, 430], [1250, 350], 'bottle jack') +
    leader([1180, 570], [1280, 690], 'platform scale') +
    leader([660, 878], [560, 560], 'leaf spring') +
    leader([420, EYE_Y + 56], [620, 1130], 'eye') +
    leader([1730, 780], [1640, 540], 'steel rule') +
    lettering('stops at both eyes', [820, 1214], { size: 36 })
  );
}
