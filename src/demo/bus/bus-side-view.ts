import { dimension, leader } from '../dimension.ts';
import { coloured, fine, flat, hidden, scaled, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, outline, type Point, spread } from '../shape.ts';
import { groundShadow } from '../solid.ts';
import { AS_FOUND, busSide, WHEELBASE } from './side.ts';

const SCALE = 0.385;
const ORIGIN: Point = [516, 1150];

/** The bus as it came, from the left, with its wheelbase. */
export function busSideView(): string {
  return (
    barn() +
    groundShadow([1000, 1152], 860) +
    scaled(ORIGIN, SCALE, busSide(AS_FOUND) + rust() + hidden(engine())) +
    numbers() +
    sizes()
  );
}

/** The barn behind, in flat colour only, so that it stays behind. */
function barn(): string {
  const boards = spread(190, 1810, 19)
    .map((x) => line([x, 420], [x, 1146]))
    .join('');
  return (
    flat(outline([140, 1150], [140, 400], [1000, 96], [1860, 400], [1860, 1150]), tint.dust) +
    coloured(boards, '#d9cdb2') +
    coloured(line([100, 416], [1000, 96], [1900, 416]), '#cdbf9f', 14) +
    fine(line([90, 1150], [1910, 1150])) +
    ground()
  );
}

function ground(): string {
  return fine(
    spread(110, 1870, 45)
      .map((x) => line([x + 22, 1154], [x, 1176]))
      .join(''),
  );
}

function rust(): string {
  const bubbles: readonly (readonly [number, number, number])[] = [
    [620, -372, 60],
    [840, -366, 90],
    [1150, -378, 110],
    [1420, -366, 70],
    [2860, -372, 90],
    [3100, -380, 70],
  ];
  return bubbles.map(([x, y, r]) => flat(disc([x, y], r, r * 0.3), tint.rust, 0.8)).join('');
}

/** Engine and gearbox, hidden in the side view: block, head, fan, box. */
function engine(): string {
  return (
    box([-260, -940], [620, 420], 30) +
    box([-230, -1080], [560, 140], 30) +
    box([-330, -900], [30, 330]) +
    'M360 -880H520L640 -780H1000V-560H360Z'
  );
}

function numbers(): string {
  const inPane = (x: number, text: string): string =>
    lettering(text, [ORIGIN[0] + x * SCALE, ORIGIN[1] - 1500 * SCALE], {
      size: 52,
      anchor: 'middle',
      halo: 'none',
    });
  return inPane(-30, '1') + inPane(900, '2') + inPane(1820, '3') + inPane(2720, '4');
}

function sizes(): string {
  const [x, y] = ORIGIN;
  return (
    dimension([x, y + 26], [x + WHEELBASE * SCALE, y + 26], {
      text: '2 286 mm',
      offset: -110,
      size: 44,
    }) +
    leader([x + 20, y - 1000 * SCALE], [590, 282], 'engine') +
    leader([x + 1240 * SCALE, y - 800 * SCALE], [1020, 246], 'side door')
  );
}
