import { edge, fine, flat, gleam, shade, tint } from '../ink.ts';
import { disc, line, outline, spread } from '../shape.ts';
import { FINISHED } from './side.ts';
import { type Place, slant } from './slant.ts';

/** The skin between the left and the right outline of the body, from the bumper up to the gutter. */
const NOSE: readonly (readonly [x: number, z: number])[] = [
  [-840, 340],
  [-856, 480],
  [-872, 620],
  [-880, 760],
  [-882, 900],
  [-879, 1040],
  [-873, 1120],
  [-858, 1250],
  [-789, 1545],
  [-720, 1840],
  [-704, 1910],
  [-672, 1980],
  [-625, 2035],
  [-560, 2078],
  [-500, 2098],
  [-440, 2110],
];

/** The front of the body of a bus so wide, from the left front. */
export function nose(width: number): string {
  const sweep = (from: number, to: number, fill: string): string => {
    const part = NOSE.slice(from, to + 1);
    const near = part.map(([x, z]) => slant([x, 0, z]));
    const far = part.map(([x, z]) => slant([x, width, z])).reverse();
    return flat(outline(...near, ...far), fill) + fine(outline(...near, ...far));
  };
  return (
    sweep(0, 6, FINISHED.lower) +
    sweep(6, 7, FINISHED.band) +
    sweep(7, 15, FINISHED.upper) +
    shade(
      outline(
        ...NOSE.map(([x, z]) => slant([x, 0, z])),
        ...NOSE.map(([x, z]) => slant([x, width, z])).reverse(),
      ),
      0.08,
    ) +
    windscreen(width) +
    lamps(width) +
    bumper(width)
  );
}

function windscreen(width: number): string {
  const pane: Place[] = [
    [-838, 150, 1330],
    [-838, width - 150, 1330],
    [-728, width - 190, 1800],
    [-728, 190, 1800],
  ];
  const corners = pane.map(slant);
  const shine = outline(
    slant([-838, 420, 1330]),
    slant([-838, 700, 1330]),
    slant([-728, 620, 1800]),
    slant([-728, 460, 1800]),
  );
  return (
    edge(outline(...corners), tint.glass) +
    gleam(shine, 0.45) +
    fine(line(slant([-838, width / 2, 1330]), slant([-728, width / 2, 1800])))
  );
}

function lamps(width: number): string {
  const round = (y: number): string => {
    const [x, z] = slant([-884, y, 820]);
    return (
      edge(disc([x, z], 44, 56), tint.steelLight) +
      fine(disc([x, z], 32, 42), tint.paper) +
      gleam(disc([x - 8, z - 12], 10, 14), 0.8)
    );
  };
  const grille = spread(640, 880, 5)
    .map((z) => line(slant([-884, 560, z]), slant([-884, width - 560, z])))
    .join('');
  return round(300) + round(width - 300) + fine(grille);
}

function bumper(width: number): string {
  const beam = outline(
    slant([-950, -20, 400]),
    slant([-950, width + 20, 400]),
    slant([-950, width + 20, 500]),
    slant([-950, -20, 500]),
  );
  return (
    edge(beam, tint.steelLight) +
    shade(
      outline(
        slant([-950, -20, 400]),
        slant([-950, width + 20, 400]),
        slant([-950, width + 20, 432]),
        slant([-950, -20, 432]),
      ),
      0.16,
    )
  );
}
