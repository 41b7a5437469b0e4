import { balloon } from '../dimension.ts';
import { cut, edge, fine, flat, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, line, type Point, softLine, spread } from '../shape.ts';
import { numbersFrom } from '../sheet.ts';

/** From the steel upwards; the first two hold the lead. */
const COATS = ['#c7774e', '#d8cfae', '#7f9fb4', '#e4dfcf', '#93a7ab', '#b9c6c8'] as const;
const HEIGHTS = [100, 130, 112, 142, 104, 118] as const;
const [LEFT, RIGHT, STEEL_TOP] = [260, 1440, 1030];

/** A paint chip cut across, a few hundred times too tall. */
export function paintCoats(): string {
  const edges = coatEdges();
  const coats = COATS.map((colour, index) => {
    const d = between(edges[index] ?? [], edges[index + 1] ?? []);
    return index < 2 ? cut(d, colour) : edge(d, colour);
  });
  return (
    flat(box([110, 110], [1780, 1230]), tint.dust) +
    steel(edges[0] ?? []) +
    coats.join('') +
    numbers() +
    notes()
  );
}

/** The wavy lines between the coats, lowest first. */
function coatEdges(): Point[][] {
  const next = numbersFrom('paint');
  const heights = [0, ...HEIGHTS].map((_, index, all) =>
    all.slice(0, index + 1).reduce((sum, height) => sum + height, 0),
  );
  return heights.map((height, index) =>
    spread(LEFT + index * 14, RIGHT - index * 22, 15).map(
      (x): Point => [x, STEEL_TOP - height + (index === 0 ? 0 : (next() - 0.5) * 34)],
    ),
  );
}

function between(lower: readonly Point[], upper: readonly Point[]): string {
  return `${softLine(...lower)}${softLine(...[...upper].reverse()).replace('M', 'L')}Z`;
}

function steel(top: readonly Point[]): string {
  const [first = [0, 0], last = [0, 0]] = [top[0], top.at(-1)];
  const foot: Point[] = [
    [last[0] + 30, 1100],
    [last[0] + 8, 1180],
    [last[0] + 40, 1260],
    [first[0] - 20, 1260],
    [first[0] + 12, 1190],
    [first[0] - 26, 1100],
  ];
  return (
    cut(`${softLine(...top)}${line(...foot).replace('M', 'L')}Z`, tint.steel, 'left') +
    lettering('steel', [LEFT - 10, 1316], { size: 44 })
  );
}

function numbers(): string {
  let height = 0;
  return COATS.map((_, index) => {
    const middle = STEEL_TOP - height - (HEIGHTS[index] ?? 0) / 2;
    height += HEIGHTS[index] ?? 0;
    return balloon([RIGHT - 90 - index * 22, middle], [1600, middle], index + 1);
  }).join('');
}

function notes(): string {
  const top = STEEL_TOP - HEIGHTS[0] - HEIGHTS[1];
  const brace = fine(
    `M1670 ${top + 6}Q1700 ${top + 6} 1700 ${top + 60}T1722 ${(top + STEEL_TOP) / 2}Q1700 ${(top + STEEL_TOP) / 2} 1700 ${STEEL_TOP - 60}T1670 ${STEEL_TOP - 6}`,
  );
  return (
    brace +
    lettering('lead', [1744, (top + STEEL_TOP) / 2 + 22], { size: 52, colour: tint.red }) +
    lettering('today', [LEFT + 90, 270], { size: 44 }) +
    lettering('1966', [RIGHT + 60, STEEL_TOP + 120], { size: 44 })
  );
}
