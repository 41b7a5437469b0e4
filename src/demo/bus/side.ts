import { edge, fine, flat, gleam, shade, tint } from '../ink.ts';
import { box, disc, line, type Point, polar } from '../shape.ts';

/**
 * The bus from its left side, in millimetres: x = 0 at the front wheel's centre and growing to the rear, y = 0 on the ground
 * and negative upwards.
 *
 * ```
 *        ____________________
 *       / [1] | [2] | [3][4] |
 *      |______|_____|________|
 *         (o)           (o)
 *          ^ 0           ^ 2286
 * ```
 */
export const WHEELBASE = 2286;
export const WHEEL_RADIUS = 320;

export interface SideLook {
  readonly upper: string;
  readonly band: string;
  readonly lower: string;
  readonly glass?: string;
  /** Panes as drawn over the glass tint, for hatching or emptiness. */
  readonly paneMark?: (d: string) => string;
  /** A door behind the cab on the left side only. */
  readonly sideDoor?: boolean;
  readonly crashed?: boolean;
  readonly wheels?: boolean;
}

export const AS_FOUND: SideLook = { upper: '#c3cdcd', band: '#8fa2a8', lower: '#a3b3b6' };
export const DONOR: SideLook = { upper: '#dccfae', band: '#b88e58', lower: '#cdb183' };
export const FINISHED: SideLook = { upper: tint.cream, band: '#47694f', lower: '#8fb08c' };

/** Everything that is seen from the left. */
export function busSide(look: SideLook): string {
  const wheels =
    look.wheels === false ? '' : wheel([0, -WHEEL_RADIUS]) + wheel([WHEELBASE, -WHEEL_RADIUS]);
  return (
    underside() + body(look) + doors(look) + panes(look) + trim(look.crashed === true) + wheels
  );
}

/** The outer skin, wheel arches left open; the donor's nose is pushed in. */
export function bodyOutline(crashed = false): string {
  const nose = crashed
    ? 'M-800 -340L-790 -560C-700 -700 -690 -860 -760 -1000L-690 -1190L-600 -1850'
    : 'M-840 -340L-872 -620C-884 -800 -884 -1000 -868 -1180L-720 -1840';
  const arch = (x: number): string => `L${x + 399.5} -340A400 400 0 0 0 ${x - 399.5} -340`;
  return (
    `${nose}C-690 -1990 -600 -2090 -440 -2110C600 -2165 2200 -2160 2960 -2120C3200 -2105 3330 -2040 3360 -1880` +
    `L3400 -1150L3405 -420Q3405 -340 3320 -340${arch(WHEELBASE)}${arch(0)}Z`
  );
}

/** Side panes from the front: 1 in the cab door, 2 in the side door, 3 and 4 fixed. */
export function paneOutlines(crashed = false): readonly [string, string, string, string] {
  const cab = crashed
    ? 'M320 -1880H-420Q-480 -1880 -490 -1840L-540 -1330Q-550 -1260 -480 -1260H320Z'
    : 'M320 -1880H-520Q-580 -1880 -596 -1830L-700 -1340Q-714 -1260 -640 -1260H320Z';
  return [
    cab,
    box([560, -1880], [680, 620], 80),
    box([1440, -1880], [760, 620], 80),
    box([2310, -1880], [820, 620], 80),
  ];
}

/** A wheel with its tyre, seen square on. */
export function wheel(centre: Point): string {
  const studs = [0, 72, 144, 216, 288]
    .map((bearing) => disc(polar(centre, 88, bearing), 13))
    .join('');
  return (
    edge(disc(centre, WHEEL_RADIUS), tint.rubber) +
    fine(disc(centre, 262)) +
    edge(disc(centre, 205), tint.steel) +
    shade(`${disc(centre, 200)}${disc(centre, 160)}`, 0.14) +
    fine(disc(centre, 128), tint.cream) +
    fine(studs, tint.steelDark) +
    gleam(disc([centre[0] - 18, centre[1] - 22], 44), 0.5)
  );
}

function underside(): string {
  const arch = (x: number): string =>
    flat(`M${x - 400} -340A400 400 0 0 1 ${x + 400} -340Z`, '#3c4146');
  return flat(box([-700, -420], [3960, 150]), '#5d5f5d') + arch(0) + arch(WHEELBASE);
}

function body({ upper, band, lower, crashed }: SideLook): string {
  const name = `body-${upper.slice(1)}${crashed ? '-crashed' : ''}`;
  const outline = bodyOutline(crashed);
  const paint =
    flat(box([-960, -1200], [4440, 900]), lower) + flat(box([-960, -1250], [4440, 130]), band);
  const light =
    gleam(box([-960, -2170], [4440, 90]), 0.4) +
    shade(box([-960, -520], [4440, 200]), 0.1) +
    shade(box([-960, -2010], [4440, 26]), 0.1);
  const lines = fine(
    line([-960, -1120], [3480, -1120]) +
      line([-960, -1250], [3480, -1250]) +
      line([-700, -2010], [3400, -2010]),
  );
  return (
    flat(outline, upper) +
    `<clipPath id="${name}"><path d="${outline}"/></clipPath><g clip-path="url(#${name})">${paint}${light}${lines}</g>` +
    edge(outline)
  );
}

function doors({ sideDoor = true, crashed }: SideLook): string {
  const cab = crashed
    ? 'M400 -1950V-526A450 450 0 0 0 -439 -420H-600L-610 -1150L-500 -1950Z'
    : 'M400 -1950V-526A450 450 0 0 0 -439 -420H-770L-794 -1150L-628 -1950Z';
  const handle = (x: number): string => edge(box([x, -1060], [130, 34], 16), tint.steelLight);
  const hinges = (x: number): string =>
    fine(box([x, -1700], [26, 90], 6) + box([x, -700], [26, 90], 6), tint.steelDark);
  return (
    fine(cab) +
    handle(230) +
    (sideDoor ? fine(box([480, -1960], [840, 1590], 60)) + handle(1150) + hinges(468) : '')
  );
}

function panes({ glass = tint.glass, paneMark, crashed }: SideLook): string {
  const outlines = paneOutlines(crashed);
  const shine = gleam(
    'M1560 -1880H1720L1540 -1420V-1830ZM2440 -1880H2640L2390 -1260H2330ZM680 -1880H840L640 -1400V-1780ZM-300 -1880H-140L-330 -1260H-470Z',
    0.4,
  );
  const quarterLight = fine(
    crashed ? line([-300, -1876], [-330, -1264]) : line([-360, -1876], [-400, -1264]),
  );
  const marks = paneMark ? outlines.map(paneMark).join('') : shine;
  return (
    outlines.map((d) => edge(d, glass)).join('') +
    marks +
    (paneMark ? outlines.map((d) => edge(d)).join('') : '') +
    quarterLight
  );
}

function trim(crashed: boolean): string {
  const rear = edge(box([3366, -1010], [44, 150], 14), tint.red);
  if (crashed) return rear + edge('M-930 -560L-640 -470L-650 -390L-950 -450Z', tint.steel);
  const bumper =
    edge('M-560 -500H-900Q-950 -500 -950 -450Q-950 -400 -900 -400H-560Z', tint.steelLight) +
    shade(box([-930, -440], [370, 36]), 0.14);
  const lamp = edge('M-884 -880Q-934 -800 -876 -700Z', tint.steelLight);
  const mirror =
    fine(line([-740, -1420], [-830, -1500])) +
    edge(box([-872, -1640], [40, 190], 14), tint.steelDark);
  return rear + bumper + lamp + mirror;
}
