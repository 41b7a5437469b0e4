import { edge, fine, flat, gleam, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { disc, line, type Point, polar, spread } from '../shape.ts';
import { block, lyingBar, standingBar } from '../solid.ts';

export interface DialOptions {
  readonly radius: number;
  /** Where the stylus touches, straight below the middle. */
  readonly touchY: number;
  /** Bearing of the needle; -90 is straight up. */
  readonly needle?: number;
  readonly marking?: string;
}

/** A dial indicator facing us, its plunger hanging down to the thing that it reads. */
export function dialIndicator(
  centre: Point,
  { radius, touchY, needle = -70, marking = '' }: DialOptions,
): string {
  const [x, y] = centre;
  const ticks = spread(-90, 261, 40).map((bearing, index) =>
    line(
      polar(centre, radius * (index % 5 === 0 ? 0.62 : 0.7), bearing),
      polar(centre, radius * 0.78, bearing),
    ),
  );
  const stem =
    standingBar([x - 15, y + radius - 6], [30, 64], tint.steel) +
    standingBar([x - 8, y + radius + 58], [16, touchY - y - radius - 74], tint.steelLight);
  const ball = edge(disc([x, touchY - 11], 11), tint.steelDark);
  const hand =
    edge(line(polar(centre, radius * 0.16, needle + 180), polar(centre, radius * 0.68, needle))) +
    flat(disc(centre, radius * 0.07), tint.ink);
  const text =
    marking === ''
      ? ''
      : lettering(marking, [x, y + radius * 0.42], {
          size: Math.max(24, radius * 0.19),
          anchor: 'middle',
          halo: 'none',
        });
  return (
    stem +
    ball +
    edge(disc(centre, radius), tint.steelDark) +
    fine(disc(centre, radius * 0.86), tint.paper) +
    gleam(disc(centre, radius * 0.97) + disc(centre, radius * 0.9), 0.4) +
    fine(ticks.join('')) +
    text +
    hand
  );
}

/** A stand on its foot: post, clamp and arm that reach the dial from the right. */
export function dialStand(foot: Point, { armY, armTo }: { armY: number; armTo: number }): string {
  const [x, y] = foot;
  return (
    lyingBar([armTo, armY - 11], [x - armTo + 40, 22], tint.steelLight) +
    standingBar([x - 14, armY - 70], [28, y - armY], tint.steel) +
    block([x - 34, armY - 34], [68, 68], tint.steelDark, 8) +
    edge(disc([x, armY], 18), tint.steel) +
    block([x - 110, y - 120], [220, 120], tint.rubber, 8) +
    edge(disc([x - 56, y - 60], 26), tint.red) +
    fine(line([x - 56, y - 78], [x - 56, y - 42]))
  );
}
