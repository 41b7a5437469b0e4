import { leader } from '../dimension.ts';
import { cut, edge, fine, flat, hidden, moved, shade, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { arc, box, disc, line, outline, type Point, polar } from '../shape.ts';
import { block, standingBar } from '../solid.ts';

const LEAN = 5;
const FRONT = 600;
const DEPTH = 520;
const BOARDS = [430, 775, 1110] as const;
const BOOKS = [
  ['#7b3f3a', 330, 270],
  ['#3f5f7f', 390, 276],
  ['#6b7a4a', 300, 250],
] as const;

/** A shelf unit from its end: boards leaning back, lips in front, steel behind. */
export function shelfOneSection(): string {
  return (
    flat(box([110, 96], [1780, 1236]), tint.dust) +
    wall() +
    sideBoard() +
    BOARDS.map(shelf).join('') +
    angle() +
    names()
  );
}

/** Rail and ribs of the body, cut off above and below. */
function wall(): string {
  const bolts = [340, 720, 1090]
    .map((y) => block([1232, y - 14], [44, 28], tint.steelDark, 4))
    .join('');
  return (
    edge(box([1400, 96], [28, 1236]), tint.green) +
    standingBar([1276, 96], [124, 1236], tint.ironLight) +
    standingBar([1200, 180], [32, 1100], tint.steel) +
    bolts +
    fine(line([1338, 100], [1338, 1328]))
  );
}

function sideBoard(): string {
  return (
    edge(
      outline([FRONT - 20, 150], [1120, 150], [1150, 200], [1150, 1296], [FRONT - 20, 1296]),
      '#ecd6ad',
    ) +
    fine(
      `M${FRONT + 40} 170C${FRONT + 90} 500 ${FRONT + 10} 900 ${FRONT + 60} 1290M${FRONT + 240} 160C${FRONT + 200} 500 ${FRONT + 290} 900 ${FRONT + 230} 1290M${FRONT + 430} 160C${FRONT + 470} 460 ${FRONT + 400} 820 ${FRONT + 440} 1290`,
    )
  );
}

/** One board, turned about its front edge, with its lip, a book and a bracket. */
function shelf(y: number, index: number): string {
  const [colour, width, height] = BOOKS[index] ?? BOOKS[0];
  const board = cut(box([0, 0], [DEPTH, 38]), tint.wood);
  const lip = cut(box([-34, -56], [34, 94], 6), tint.woodDark, 'left');
  const book =
    edge(box([30, -height], [width, height], 6), colour) +
    fine(box([52, -height + 22], [width - 44, height - 44], 4)) +
    flat(box([34, -height + 4], [16, height - 8]), tint.ink, 0.25);
  const second =
    index === 1
      ? ''
      : edge(box([width + 44, -height + 40], [100, height - 40], 4), tint.cream) +
        shade(box([width + 50, -height + 46], [16, height - 52]), 0.12);
  const bracket =
    edge(
      outline(
        [DEPTH - 170, 38],
        [DEPTH + 86, 38],
        [DEPTH + 86, 158],
        [DEPTH + 62, 158],
        [DEPTH + 62, 66],
        [DEPTH - 170, 66],
      ),
      tint.steelDark,
    ) +
    edge(line([DEPTH - 90, 66], [DEPTH + 62, 140])) +
    fine(disc([DEPTH - 120, 52], 8), tint.steelLight);
  return moved([FRONT, y], bracket + book + second + board + lip, { turn: LEAN });
}

function angle(): string {
  const corner: Point = [FRONT, BOARDS[1]];
  const reach = 620;
  return (
    hidden(line(corner, [FRONT + reach + 330, corner[1]])) +
    fine(arc(corner, reach + 280, [0.4, LEAN - 0.4])) +
    fine(line(polar(corner, DEPTH + 100, LEAN), polar(corner, reach + 300, LEAN))) +
    lettering('5°', [FRONT + reach + 312, corner[1] + 66], { size: 52 })
  );
}

function names(): string {
  return (
    leader([FRONT - 14, BOARDS[0] - 20], [430, BOARDS[0] - 60], 'lip') +
    leader([FRONT + 130, BOARDS[2] + 30], [430, BOARDS[2] + 60], 'board') +
    leader([FRONT - 10, 1000], [430, 1000], 'side') +
    leader([1232, 250], [1560, 210], 'steel rail') +
    leader([1370, 420], [1560, 380], 'body rib') +
    leader([1414, 600], [1560, 560], 'outer skin') +
    leader([1160, 1222], [1560, 1222], 'bracket')
  );
}
