import { coloured, edge, fine, gleam, shade, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, type Point } from '../shape.ts';

interface Branch {
  /** Where it leaves the trunk. */
  readonly from: number;
  readonly to: Point;
  readonly wires: string;
  readonly colours: readonly string[];
}

const TRUNK = 720;
const [RED, BLUE, GREEN, BROWN, BLACK, YELLOW] = [
  '#b5473a',
  '#39689c',
  '#4f7d55',
  '#7a5236',
  '#31363b',
  '#d3a93c',
] as const;

/** Nine branches, numbered by the wires that end there. */
const BRANCHES: readonly Branch[] = [
  { from: 400, to: [330, 330], wires: '1-8', colours: [RED, BLUE, BROWN] },
  { from: 560, to: [660, 250], wires: '9-14', colours: [GREEN, BLACK] },
  { from: 900, to: [960, 330], wires: '15-22', colours: [YELLOW, RED, BLACK] },
  { from: 1180, to: [1290, 250], wires: '23-28', colours: [BLUE, BROWN] },
  { from: 1500, to: [1640, 330], wires: '29-36', colours: [GREEN, RED, BLUE] },
  { from: 480, to: [420, 1110], wires: '37-41', colours: [BLACK, YELLOW] },
  { from: 760, to: [800, 1190], wires: '42-47', colours: [BROWN, GREEN] },
  { from: 1080, to: [1170, 1110], wires: '48-54', colours: [RED, BLUE, BLACK] },
  { from: 1420, to: [1560, 1190], wires: '55-61', colours: [YELLOW, BROWN] },
];

/** The loom on its board: a trunk, nine branches, nails at every bend, a label at every end. */
export function loomBoard(): string {
  return (
    board() +
    BRANCHES.map(branch).join('') +
    trunk() +
    BRANCHES.map(nails).join('') +
    BRANCHES.map(label).join('')
  );
}

function board(): string {
  const joints = [420, 730, 1040].map((y) => line([110, y], [1890, y])).join('');
  const grain = [200, 330, 520, 640, 860, 960, 1130, 1260]
    .map((y, index) => `M${150 + index * 60} ${y}q300 ${index % 2 === 0 ? 14 : -14} 700 0t600 6`)
    .join('');
  return (
    shade(box([116, 126], [1790, 1210], 8), 0.14) +
    edge(box([104, 110], [1792, 1210], 6), tint.wood) +
    coloured(grain, '#cba775') +
    fine(joints)
  );
}

function trunk(): string {
  const body = `M240 ${TRUNK}H1700`;
  const ties = [300, 470, 620, 740, 850, 1000, 1130, 1270, 1370, 1590]
    .map((x) => edge(line([x, TRUNK - 17], [x + 6, TRUNK + 17])))
    .join('');
  const ends =
    label({ from: 0, to: [220, TRUNK], wires: 'A', colours: [] }) +
    label({ from: 0, to: [1780, TRUNK], wires: 'B', colours: [] });
  return (
    coloured(body, tint.ink, 44) +
    coloured(body, '#55504a', 34) +
    gleam(box([250, TRUNK - 12], [1440, 7]), 0.35) +
    ties +
    coloured(`M1700 ${TRUNK}H1760`, BLACK, 14) +
    ends
  );
}

/** Wires side by side, out of the trunk, round a nail, and to their end. */
function branch({ from, to, colours }: Branch): string {
  const [x, y] = to;
  const away = Math.sign(y - TRUNK);
  return colours
    .map((colour, index) => {
      const shift = (index - (colours.length - 1) / 2) * 15;
      const path = `M${from - 60 + shift} ${TRUNK}Q${from + shift} ${TRUNK} ${from + shift} ${TRUNK + away * 70}L${x + shift} ${y - away * 120}V${y}`;
      return coloured(path, tint.ink, 17) + coloured(path, colour, 11);
    })
    .join('');
}

function nails({ from, to: [x, y] }: Branch): string {
  const away = Math.sign(y - TRUNK);
  const nail = (at: Point): string =>
    shade(disc([at[0] + 7, at[1] + 8], 13), 0.2) + edge(disc(at, 13), tint.steelLight);
  return (
    nail([from + 44, TRUNK + away * 62]) +
    nail([x - 48, y - away * 118]) +
    nail([x + 48, y - away * 118])
  );
}

function label({ to: [x, y], wires }: Branch): string {
  const up = y < TRUNK ? -1 : 1;
  const top = y === TRUNK ? y - 37 : y + (up === 1 ? 0 : -74);
  const width = wires.length > 1 ? 190 : 84;
  return (
    shade(box([x - width / 2 + 8, top + 9], [width, 74], 8), 0.16) +
    edge(box([x - width / 2, top], [width, 74], 8), tint.paper) +
    lettering(wires, [x, top + 56], { size: 38, anchor: 'middle', halo: 'none' })
  );
}
