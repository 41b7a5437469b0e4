import { arrow } from '../dimension.ts';
import { axis, coloured, edge, fine, flat, ghost, hidden, moved, scaled, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, type Point } from '../shape.ts';
import { lyingBar } from '../solid.ts';
import { PLAN_OUTLINE } from './plan.ts';

const SCALE = 0.4;
/** Half the distance between the rails, and where the mounts lie along them, in millimetres. */
const HALF = 450;
const MOUNTS = [-560, 1033, 2772] as const;
/** The left rail stands 3.5 mm ahead; drawn twenty times too large. */
const LEAN = 3.5 * 20;
const ORIGIN: Point = [522, 620];

/** The frame from above, its lean made visible by two pairs of diagonals. */
export function diagonals(): string {
  const ahead = LEAN / 2;
  return (
    flat(box([96, 150], [1808, 940]), tint.dust) +
    scaled(ORIGIN, SCALE, ghost(PLAN_OUTLINE)) +
    axis(line([90, ORIGIN[1]], [1910, ORIGIN[1]])) +
    square() +
    rail(-HALF, ahead) +
    rail(HALF, -ahead) +
    pairOf(0) +
    pairOf(1) +
    mounts() +
    notes()
  );
}

function at(x: number, y: number): Point {
  return [ORIGIN[0] + x * SCALE, ORIGIN[1] + y * SCALE];
}

/** A mount: `side` 1 is the left rail, lower on the sheet and pushed ahead. */
function mount(index: number, side: 1 | -1): Point {
  return at((MOUNTS[index] ?? 0) - (side * LEAN) / 2, side * HALF);
}

function rail(y: number, shift: number): string {
  const [left, middle] = at(MOUNTS[0] - 200 + shift, y);
  return lyingBar([left, middle - 22], [(MOUNTS[2] - MOUNTS[0] + 400) * SCALE, 44], tint.steel, 4);
}

/** The frame as it was meant. */
function square(): string {
  const [front, middle, rear] = MOUNTS.map((x) => [at(x, -HALF), at(x, HALF)] as const);
  return [front, middle, rear].map((pair) => (pair ? hidden(line(...pair)) : '')).join('');
}

function pairOf(index: number): string {
  const [a, b] = [
    [mount(index, 1), mount(index + 1, -1)],
    [mount(index, -1), mount(index + 1, 1)],
  ] as const;
  const text =
    [
      ['A  1 833', 'B  1 828'],
      ['A  1 962', 'B  1 955'],
    ][index] ?? [];
  return (
    coloured(line(...a), tint.red, 5) +
    coloured(line(...b), tint.blue, 5) +
    along(a, text[0] ?? '', tint.red) +
    along(b, text[1] ?? '', tint.blue)
  );
}

function along([start, end]: readonly [Point, Point], text: string, colour: string): string {
  const share = 0.28;
  const turn = (Math.atan2(end[1] - start[1], end[0] - start[0]) * 180) / Math.PI;
  return moved(
    [start[0] + (end[0] - start[0]) * share, start[1] + (end[1] - start[1]) * share],
    lettering(text, [0, -14], { size: 38, anchor: 'middle', colour, halo: tint.dust }),
    { turn },
  );
}

function mounts(): string {
  const mark = ([x, y]: Point): string =>
    edge(disc([x, y], 20), tint.brass) +
    fine(line([x - 30, y], [x + 30, y]) + line([x, y - 30], [x, y + 30]));
  const number = (index: number): string => {
    const [x, y] = mount(index, -1);
    const [lowX, lowY] = mount(index, 1);
    const text = String(index * 2 + 1);
    return (
      mark([x, y]) +
      mark([lowX, lowY]) +
      lettering(text, [x, y - 46], { size: 40, anchor: 'middle' }) +
      lettering(text, [lowX, lowY + 82], { size: 40, anchor: 'middle' })
    );
  };
  return [0, 1, 2].map(number).join('');
}

function notes(): string {
  const [frontX, rearX] = [at(236, 0)[0], at(1902, 0)[0]];
  const y = ORIGIN[1] + 560;
  return (
    lettering('A less B: 5 mm', [frontX, y], { size: 44, anchor: 'middle' }) +
    lettering('A less B: 7 mm', [rearX, y], { size: 44, anchor: 'middle' }) +
    lettering('lean drawn 20 times too large', [110, 1280], { size: 40 }) +
    lettering('front', [110, 126], { size: 40 }) +
    fine(line([260, 112], [330, 112])) +
    arrow([226, 112], 180, { length: 36 }) +
    lettering('right rail', [at(1900, 0)[0], at(0, -HALF)[1] - 44], {
      size: 36,
      anchor: 'middle',
    }) +
    lettering('left rail', [at(1900, 0)[0], at(0, HALF)[1] + 76], { size: 36, anchor: 'middle' })
  );
}
