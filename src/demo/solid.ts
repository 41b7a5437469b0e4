import { edge, fine, gleam, shade, tint } from './ink.ts';
import { box, disc, line, outline, type Point, polar, ring, spread } from './shape.ts';

/** A round bar lying across the sheet, seen from the side: light above the middle, dark below. */
export function lyingBar([x, y]: Point, [width, height]: Point, fill: string, radius = 0): string {
  const inset = Math.min(radius, 6) / 2;
  const strip = (from: number, share: number): string =>
    box([x + inset, y + height * from], [width - 2 * inset, height * share]);
  return `${edge(box([x, y], [width, height], radius), fill)}${gleam(strip(0.14, 0.18))}${shade(strip(0.7, 0.3 - inset / height))}`;
}

/** The same standing up: light left of the middle, dark to the right. */
export function standingBar(
  [x, y]: Point,
  [width, height]: Point,
  fill: string,
  radius = 0,
): string {
  const inset = Math.min(radius, 6) / 2;
  const strip = (from: number, share: number): string =>
    box([x + width * from, y + inset], [width * share, height - 2 * inset]);
  return `${edge(box([x, y], [width, height], radius), fill)}${gleam(strip(0.14, 0.18))}${shade(strip(0.7, 0.3 - inset / width))}`;
}

/** A flat-sided block with a light upper edge and a dark lower one. */
export function block([x, y]: Point, [width, height]: Point, fill: string, radius = 0): string {
  const band = Math.min(height * 0.14, 16);
  return (
    edge(box([x, y], [width, height], radius), fill) +
    gleam(box([x + 4, y + 4], [width - 8, band], radius), 0.3) +
    shade(box([x + 4, y + height - band - 4], [width - 8, band], radius), 0.14)
  );
}

/** A screw from the side: threads as slanting narrow lines. */
export function screwThread(
  [x, y]: Point,
  [length, diameter]: Point,
  { pitch = 12, fill = tint.steelLight as string } = {},
): string {
  const turns = Math.floor(length / pitch) - 1;
  const flights = spread(x + 2, x + 2 + (turns - 1) * pitch, turns).map((at) =>
    line([at, y + diameter], [at + pitch * 0.7, y]),
  );
  return lyingBar([x, y], [length, diameter], fill) + fine(flights.join(''));
}

/** A handwheel seen face on, with a crank handle at the bearing given. */
export function handwheel(centre: Point, radius: number, handleAt = -45): string {
  const spoke = (bearing: number): string =>
    outline(
      polar(centre, radius * 0.3, bearing - 16),
      polar(centre, radius * 0.75, bearing - 5),
      polar(centre, radius * 0.75, bearing + 5),
      polar(centre, radius * 0.3, bearing + 16),
    );
  const grip = polar(centre, radius * 0.86, handleAt);
  return (
    fine([90, 210, 330].map(spoke).join(''), tint.steelDark) +
    edge(ring(centre, radius, radius * 0.74), tint.steel) +
    gleam(ring(centre, radius * 0.96, radius * 0.87), 0.35) +
    edge(disc(centre, radius * 0.28), tint.steelLight) +
    fine(disc(centre, radius * 0.1), tint.steelDark) +
    edge(disc(grip, Math.max(radius * 0.2, 10)), tint.woodDark)
  );
}

/** A handwheel seen from its rim, its grip pointing right. */
export function handwheelEdge([x, y]: Point, radius: number): string {
  return (
    lyingBar([x + 24, y - radius * 0.9], [44, 22], tint.woodDark, 9) +
    lyingBar([x, y - radius], [24, 2 * radius], tint.steel, 9)
  );
}

/** A shadow lying on the ground under something. */
export function groundShadow([x, y]: Point, halfWidth: number): string {
  return shade(disc([x, y], halfWidth, Math.min(halfWidth * 0.06, 22)), 0.13);
}
