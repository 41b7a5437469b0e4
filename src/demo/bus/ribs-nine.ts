import { arrow, leader } from '../dimension.ts';
import { axis, cut, edge, fine, flat, ghost, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, spread } from '../shape.ts';
import { block, lyingBar } from '../solid.ts';

const DONOR_RIBS: readonly number[] = [1, 2, 4, 6, 7];
const PLACES = spread(250, 1750, 9);
const [TOP, BOTTOM, MIDDLE] = [330, 1050, 690];

/** The frame from above with its nine cross ribs, numbered from the front. */
export function ribsNine(): string {
  return (
    flat(box([96, 96], [1808, 1130]), tint.dust) +
    sills() +
    rail(MIDDLE - 190) +
    rail(MIDDLE + 190) +
    hangers() +
    PLACES.map((x, index) => rib(x, index + 1)).join('') +
    axis(line([110, MIDDLE], [1890, MIDDLE])) +
    notes()
  );
}

function sills(): string {
  return ghost(box([150, TOP - 60], [1700, 50], 10) + box([150, BOTTOM + 10], [1700, 50], 10));
}

function rail(y: number): string {
  return lyingBar([140, y - 42], [1720, 84], tint.steel, 6);
}

function rib(x: number, number: number): string {
  const donor = DONOR_RIBS.includes(number);
  const shape = box([x - 38, TOP], [76, BOTTOM - TOP], 6);
  const holes = [TOP + 80, MIDDLE, BOTTOM - 80]
    .map((y) => fine(disc([x, y], 17), tint.dust))
    .join('');
  const body = donor ? cut(shape, '#d8bb88') : edge(shape, tint.steelLight);
  const number2 =
    edge(disc([x, TOP - 140], 38), tint.paper) +
    lettering(String(number), [x, TOP - 120], { size: 40, anchor: 'middle', halo: 'none' });
  return body + (donor ? '' : holes) + fine(line([x, TOP - 100], [x, TOP - 8])) + number2;
}

/** The springs hang from rib 7. */
function hangers(): string {
  const x = PLACES[6] ?? 0;
  return [MIDDLE - 300, MIDDLE + 240]
    .map((y) => block([x + 30, y], [76, 60], tint.steelDark, 8))
    .join('');
}

function notes(): string {
  return (
    fine(line([130, 1286], [220, 1286])) +
    arrow([104, 1286], 180, { length: 36 }) +
    lettering('front', [240, 1300], { size: 40 }) +
    cut(box([480, 1252], [90, 64], 6), '#d8bb88') +
    lettering('donor', [594, 1300], { size: 40 }) +
    edge(box([800, 1252], [90, 64], 6), tint.steelLight) +
    lettering('made', [914, 1300], { size: 40 }) +
    leader([(PLACES[6] ?? 0) + 80, MIDDLE + 270], [(PLACES[6] ?? 0) + 110, 1150], 'spring hanger')
  );
}
