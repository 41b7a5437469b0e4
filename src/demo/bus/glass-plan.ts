import { edge, fine, flat, ghost, gleam, moved, scaled, tint, within } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, line, outline, type Point, polar } from '../shape.ts';
import { numbersFrom } from '../sheet.ts';
import { DONOR, paneOutlines, WHEELBASE } from './side.ts';

const SCALE = 0.24;
/** The roof lies in the middle of the sheet; sides and ends fold out from it. */
const ROOF: Point = [486, 560];
const ROOF_SIZE: Point = [1028, 330];
const SIDE_DROP = 1780;

/** The body unfolded like a box, nose to the left, with its ten panes. */
export function glassPlan(): string {
  const [x, y] = ROOF;
  const [width, height] = ROOF_SIZE;
  const left = moved(
    [x + 884 * SCALE, y + height + 2120 * SCALE],
    scaled([0, 0], SCALE, sideSkin('left', [0, 1, 2, 3])),
  );
  const right = `<g transform="translate(${x + 884 * SCALE} ${y - 2120 * SCALE}) scale(1 -1)">${scaled([0, 0], SCALE, sideSkin('right', [0, 1, 2]))}</g>`;
  return (
    left +
    right +
    roof() +
    front() +
    rear() +
    crumbs([x + (884 + 2720) * SCALE, y - 545 * SCALE]) +
    ghost(box(ROOF, [width, height])) +
    numbers()
  );
}

/** One side, its lower edge cut by the wheel arches; only some panes are whole. */
function sideSkin(name: string, whole: readonly number[]): string {
  const arch = (x: number): string => `L${x + 399.5} -340A400 400 0 0 0 ${x - 399.5} -340`;
  const skin = `M-884 -2120H3400V-340${arch(WHEELBASE)}${arch(0)}H-884Z`;
  const panes = paneOutlines();
  const glass = whole.map((index) => edge(panes[index] ?? '', tint.glass)).join('');
  return (
    edge(skin, DONOR.upper) +
    within(skin, `skin-${name}`, flat(box([-880, -1200], [4276, 852]), DONOR.lower, 0.6)) +
    edge(skin) +
    edge(panes.join(''), tint.shade) +
    glass
  );
}

function roof(): string {
  const [x, y] = ROOF;
  const [width, height] = ROOF_SIZE;
  const seams = [0.25, 0.5, 0.75]
    .map((share) => line([x + width * share, y + 16], [x + width * share, y + height - 16]))
    .join('');
  return (
    edge(box(ROOF, ROOF_SIZE), DONOR.upper) +
    gleam(box([x + 20, y + 20], [width - 40, 46], 20), 0.35) +
    fine(seams)
  );
}

function front(): string {
  const [x, y] = ROOF;
  const depth = SIDE_DROP * SCALE - 20;
  const lamps = [y + 50, y + ROOF_SIZE[1] - 50]
    .map((at) => edge(`M${x - depth + 120} ${at - 34}a34 34 0 1 0 .1 0Z`, tint.cream))
    .join('');
  return (
    edge(box([x - depth, y], [depth, ROOF_SIZE[1]]), DONOR.upper) +
    flat(box([x - depth + 3, y + 3], [190, ROOF_SIZE[1] - 6]), DONOR.lower, 0.6) +
    lamps +
    edge(
      outline(
        [x - 190, y + 26],
        [x - 50, y + 50],
        [x - 50, y + ROOF_SIZE[1] - 50],
        [x - 190, y + ROOF_SIZE[1] - 26],
      ),
      tint.glass,
    )
  );
}

function rear(): string {
  const [x, y] = [ROOF[0] + ROOF_SIZE[0], ROOF[1]];
  const depth = SIDE_DROP * SCALE - 20;
  return (
    edge(box([x, y], [depth, ROOF_SIZE[1]]), DONOR.upper) +
    flat(box([x + depth - 193, y + 3], [190, ROOF_SIZE[1] - 6]), DONOR.lower, 0.6) +
    fine(line([x + 214, y + ROOF_SIZE[1] / 2], [x + depth, y + ROOF_SIZE[1] / 2])) +
    edge(box([x + 54, y + 44], [140, ROOF_SIZE[1] - 88], 20), tint.glass)
  );
}

/** Pane 5 in its present state. */
function crumbs(centre: Point): string {
  const next = numbersFrom('pane five');
  const crumb = (): string => {
    const at = polar(centre, 10 + 78 * Math.sqrt(next()), 360 * next());
    const turn = 360 * next();
    const size = 7 + 8 * next();
    return fine(
      outline(
        polar(at, size, turn),
        polar(at, size, turn + 110 + 30 * next()),
        polar(at, size, turn + 240),
      ),
      tint.glass,
    );
  };
  return Array.from({ length: 70 }, crumb).join('');
}

function numbers(): string {
  const [x, y] = ROOF;
  const along = [-60, 900, 1820, 2720].map((mm) => x + (884 + mm) * SCALE);
  const write = (text: string, at: Point): string =>
    lettering(text, at, { size: 46, anchor: 'middle', halo: 'none' });
  const left = along.map((at, index) =>
    write(String(index + 1), [at, y + ROOF_SIZE[1] + 570 * SCALE]),
  );
  const right = along
    .slice(0, 3)
    .map((at, index) => write(String(8 - index), [at, y - 520 * SCALE + 18]));
  const five = write('5', [x + (884 + 3268) * SCALE, y - 520 * SCALE + 18]);
  return (
    left.join('') +
    right.join('') +
    five +
    write('9', [x - 120, y + 190]) +
    write('10', [x + ROOF_SIZE[0] + 124, y + 188]) +
    lettering('right', [150, 250], { size: 40 }) +
    lettering('left', [150, 1250], { size: 40 }) +
    lettering('front', [100, y - 24], { size: 40 }) +
    lettering('rear', [1800, y - 24], { size: 40 })
  );
}
