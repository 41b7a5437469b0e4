import { dimension, leader } from '../dimension.ts';
import { coloured, edge, fine, flat, gleam, shade, tint, within } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { blot, box, line, type Point, spread } from '../shape.ts';
import { numbersFrom } from '../sheet.ts';

const SIDE = 780;
const LEFT: Point = [130, 190];
const RIGHT: Point = [1090, 190];

/** A square of the front way before and after scraping, and where on the bed it lies. */
export function bluePoints(): string {
  return asFound() + asFinished() + sizes() + place();
}

function asFound(): string {
  const next = numbersFrom('as found');
  const [x, y] = LEFT;
  const scores = spread(y + 30, y + SIDE - 30, 14).map((at) =>
    line([x, at + 16 * next()], [x + SIDE, at + 16 * next()]),
  );
  const patches: readonly (readonly [Point, number])[] = [
    [[x + 190, y + 220], 140],
    [[x + 520, y + 400], 150],
    [[x + 190, y + 600], 120],
  ];
  const blue = patches.map(
    ([at, radius]) =>
      inked(blot(at, radius, next)) +
      inked(blot([at[0] + radius * 0.8, at[1] + radius * 0.5], radius * 0.55, next)),
  );
  return (
    ground(LEFT, 'found', coloured(scores.join(''), tint.ironDark) + blue.join('')) +
    heading(LEFT, 'as found')
  );
}

/** Sixteen spots: one in each cell of four by four, a little off its middle. */
function asFinished(): string {
  const next = numbersFrom('as finished');
  const cell = SIDE / 4;
  const spot = (index: number): string => {
    const [column, row] = [index % 4, Math.floor(index / 4)];
    const off = (): number => (next() - 0.5) * 60;
    return inked(
      blot(
        [RIGHT[0] + (column + 0.5) * cell + off(), RIGHT[1] + (row + 0.5) * cell + off()],
        34 + 8 * next(),
        next,
      ),
    );
  };
  return (
    ground(RIGHT, 'finished', Array.from({ length: 16 }, (_, index) => spot(index)).join('')) +
    heading(RIGHT, 'as finished')
  );
}

function inked(d: string): string {
  return coloured(d, tint.blue, 9) + flat(d, tint.blue);
}

/** Scraped iron: short strokes, each patch across its neighbours. */
function ground([x, y]: Point, name: string, marks: string): string {
  const side = SIDE / 8;
  const scrape = (index: number): string => {
    const [column, row] = [index % 8, Math.floor(index / 8)];
    const leans = (column + row) % 2 === 0;
    const at = (across: number, down: number): Point => [
      x + (column + (leans ? across : 1 - across)) * side,
      y + (row + down) * side,
    ];
    return (
      line(at(0.1, 0.5), at(0.5, 0.1)) +
      line(at(0.1, 0.9), at(0.9, 0.1)) +
      line(at(0.5, 0.9), at(0.9, 0.5))
    );
  };
  const strokes = Array.from({ length: 64 }, (_, index) => scrape(index)).join('');
  const square = box([x, y], [SIDE, SIDE]);
  return (
    shade(box([x + 16, y + 18], [SIDE, SIDE]), 0.12) +
    flat(square, tint.ironLight) +
    within(
      square,
      name,
      coloured(strokes, tint.ironDark) + marks + gleam(box([x, y], [SIDE, 14]), 0.4),
    ) +
    edge(square)
  );
}

function heading([x, y]: Point, text: string): string {
  return lettering(text, [x, y - 36], { size: 52 });
}

function sizes(): string {
  const below = ([x, y]: Point): string =>
    dimension([x, y + SIDE + 12], [x + SIDE, y + SIDE + 12], { text: '25 mm', offset: -80 });
  return below(LEFT) + below(RIGHT);
}

/** The bed from above in small, the square on its front way. */
function place(): string {
  const [x, y] = [130, 1170];
  const way = (top: number, height: number): string =>
    edge(box([x, top], [700, height]), tint.ironLight);
  return (
    edge(box([x, y], [700, 150]), tint.green) +
    way(y + 8, 36) +
    way(y + 96, 46) +
    edge(box([x + 30, y - 12], [150, 174], 6), tint.greenDark) +
    fine(line([x + 700, y - 16], [x + 700, y + 166])) +
    edge(box([x + 330, y + 102], [34, 34]), tint.blue) +
    leader([x + 347, y + 119], [890, y + 119], 'front way, near the headstock')
  );
}
