import { dimension, leader, pointer } from '../dimension.ts';
import { axis, edge, fine, flat, gleam, shade, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, outline, spread } from '../shape.ts';
import { block, lyingBar, standingBar } from '../solid.ts';

const CENTRE = 640;
/** 6 px to the millimetre: collars of 30 mm, 150 mm apart. */
const NEAR = 560;
const FAR = 1460;

/** The last test bar seen from above: turned on two collars, measured on the second. */
export function twoCollars(): string {
  return (
    flat(box([110, 100], [1780, 1220]), tint.dust) +
    slide() +
    chuck() +
    bar() +
    tool() +
    micrometer() +
    notes()
  );
}

function chuck(): string {
  const jaw = (y: number, height: number): string =>
    block([346, y], [100, height], tint.steelLight, 4);
  const steps = (y: number): string =>
    fine(line([380, y + 4], [380, y + 96]) + line([412, y + 4], [412, y + 96]));
  return (
    lyingBar([110, CENTRE - 110], [60, 220], tint.steelLight) +
    lyingBar([170, CENTRE - 190], [40, 380], tint.steelDark) +
    lyingBar([210, CENTRE - 260], [136, 520], tint.steel, 14) +
    fine(line([240, CENTRE - 254], [240, CENTRE + 254])) +
    edge(disc([290, CENTRE + 170], 30), tint.steelDark) +
    edge(box([276, CENTRE + 156], [28, 28]), tint.rubber) +
    jaw(CENTRE - 168, 100) +
    steps(CENTRE - 168) +
    jaw(CENTRE + 68, 100) +
    steps(CENTRE + 68)
  );
}

function bar(): string {
  const collar = (x: number): string =>
    lyingBar([x, CENTRE - 90], [120, 180], tint.steelLight, 4) +
    fine(
      spread(x + 12, x + 108, 13)
        .map((at) => line([at, CENTRE - 84], [at, CENTRE + 84]))
        .join(''),
    );
  return (
    lyingBar([346, CENTRE - 66], [1266, 132], tint.steel, 8) +
    collar(NEAR) +
    collar(FAR) +
    axis(line([130, CENTRE], [1700, CENTRE]))
  );
}

function slide(): string {
  const slot = (y: number): string => fine(box([470, y], [480, 20]), tint.greenDark);
  return block([430, 1010], [560, 310], tint.green, 8) + slot(1230) + slot(1280);
}

/** The tool stands at the right edge of the near collar and goes along the bar. */
function tool(): string {
  const x = NEAR + 128;
  const shank = outline(
    [x, CENTRE + 90],
    [x + 26, CENTRE + 122],
    [x + 30, 1060],
    [x - 40, 1060],
    [x - 40, CENTRE + 150],
    [x - 8, CENTRE + 100],
  );
  const bolt = (at: number): string =>
    edge(disc([at, 1118], 24), tint.steel) + fine(box([at - 12, 1106], [24, 24]), tint.steelDark);
  return (
    edge(shank, tint.steelDark) +
    shade(
      outline([x + 8, CENTRE + 108], [x + 26, CENTRE + 124], [x + 30, 1060], [x + 8, 1060]),
      0.15,
    ) +
    block([x - 120, 1040], [240, 150], tint.steel, 6) +
    bolt(x - 70) +
    bolt(x + 70)
  );
}

/** It reaches round the free end: anvil below the collar, thimble above. */
function micrometer(): string {
  const x = FAR + 60;
  const top = CENTRE - 90;
  const bottom = CENTRE + 90;
  const frame = `M${x - 26} ${bottom + 44}C${x - 20} ${bottom + 150} ${x + 320} ${bottom + 120} ${x + 320} ${CENTRE}C${x + 320} ${top - 130} ${x + 60} ${top - 130} ${x - 34} ${top - 110}L${x - 34} ${top - 52}C${x + 90} ${top - 62} ${x + 236} ${top - 40} ${x + 236} ${CENTRE}C${x + 236} ${bottom + 60} ${x + 100} ${bottom + 66} ${x + 26} ${bottom + 44}Z`;
  const scale = spread(top - 232, top - 130, 8).map((y, index) =>
    line([x, y], [x + (index % 2 === 0 ? 26 : 16), y]),
  );
  const knurl = spread(top - 360, top - 292, 5).map((y) => line([x - 44, y], [x + 44, y]));
  return (
    standingBar([x - 17, bottom], [34, 48], tint.steelLight) +
    standingBar([x - 17, top - 60], [34, 60], tint.steelLight) +
    edge(frame, tint.greenDark) +
    gleam(disc([x + 278, CENTRE - 10], 12, 64), 0.3) +
    standingBar([x - 34, top - 244], [68, 140], tint.steelLight) +
    fine(scale.join('') + line([x, top - 240], [x, top - 110])) +
    standingBar([x - 46, top - 372], [92, 140], tint.steel, 8) +
    fine(knurl.join('')) +
    standingBar([x - 26, top - 420], [52, 50], tint.steelDark, 8)
  );
}

function notes(): string {
  return (
    dimension([NEAR, CENTRE - 96], [FAR, CENTRE - 96], { text: '150 mm', offset: 170, size: 44 }) +
    leader([NEAR + 100, CENTRE - 74], [790, 470], 'Ø30') +
    pointer([
      [1240, 800],
      [770, 800],
    ]) +
    lettering('one setting of the tool', [800, 868], { size: 40 })
  );
}
