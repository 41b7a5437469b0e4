import { dimension, leader } from '../dimension.ts';
import { cut, edge, fine, flat, hidden, shade, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, outline, spread } from '../shape.ts';

/** 9 px to the millimetre. */
const SIX = 54;
const RAIL_TOP = 800;
const RIB_TOP = 460;

/** Rail and plate are cut; the rib runs across, so it is seen from its side. */
export function spacerSection(): string {
  return (
    flat(box([110, 96], [1780, 1236]), tint.dust) +
    rib() +
    floorPanel() +
    rail() +
    plate() +
    welds() +
    before() +
    sizes() +
    names()
  );
}

function rail(): string {
  const [outer, inner] = [
    box([760, RAIL_TOP], [420, 480], 26),
    box([796, RAIL_TOP + 36], [348, 408], 10),
  ];
  return flat(box([796, RAIL_TOP + 36], [348, 408]), tint.paper) + cut(outer + inner, tint.steel);
}

function plate(): string {
  return cut(box([700, RAIL_TOP - SIX], [540, SIX]), tint.brass, 'left');
}

/** A pressed channel: web with holes between two flanges. */
function rib(): string {
  const bottom = RAIL_TOP - SIX;
  const holes = spread(260, 1550, 6)
    .map(
      (x) =>
        edge(disc([x, (RIB_TOP + bottom) / 2], 52), tint.dust) +
        fine(disc([x, (RIB_TOP + bottom) / 2], 66)),
    )
    .join('');
  return (
    edge(box([110, RIB_TOP], [1590, bottom - RIB_TOP]), tint.steelLight) +
    holes +
    fine(
      line([110, RIB_TOP + 30], [1700, RIB_TOP + 30]) +
        line([110, bottom - 30], [1700, bottom - 30]),
    ) +
    shade(box([110, bottom - 28], [1590, 25]), 0.12)
  );
}

function floorPanel(): string {
  return cut(box([110, RIB_TOP - 34], [1590, 34]), tint.greenDark);
}

function welds(): string {
  const bead = (x: number, side: 1 | -1): string =>
    flat(outline([x, RAIL_TOP], [x + side * 30, RAIL_TOP], [x, RAIL_TOP + 30]), tint.ink);
  return bead(760, -1) + bead(1180, 1);
}

/** Where the upper side of the floor would have come. */
function before(): string {
  return hidden(line([110, RIB_TOP - 34 + SIX], [1700, RIB_TOP - 34 + SIX]));
}

function sizes(): string {
  return (
    dimension([700, RAIL_TOP - SIX], [700, RAIL_TOP], { text: '6', offset: -150, size: 44 }) +
    dimension([1700, RIB_TOP - 34 + SIX], [1700, RIB_TOP - 34], {
      text: '6',
      offset: -80,
      size: 44,
    })
  );
}

function names(): string {
  return (
    leader([420, RIB_TOP - 18], [500, 250], 'floor panel') +
    leader([1400, RIB_TOP - 34 + SIX], [1330, 340], 'floor without the plate') +
    leader([1560, 690], [1600, 900], 'rib of 1968') +
    leader([1200, RAIL_TOP - 26], [1400, 1010], 'plate') +
    leader([1164, 1130], [1400, 1130], 'box rail') +
    leader([742, RAIL_TOP + 8], [560, 1010], 'weld') +
    lettering('each end of each rib', [1444, 1066], { size: 32 })
  );
}
