import { dimension, leader } from '../dimension.ts';
import { coloured, edge, fine, flat, gleam, hidden, shade, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, outline, spread } from '../shape.ts';
import { block } from '../solid.ts';

/** 11 px to the millimetre. */
const PER_MM = 11;
const MEANT = 300;
const FOUND = MEANT + 11 * PER_MM;
const CORNER = 520;
const TOP = 480;
const BOTTOM = 1130;

/** Rear end of the left sill from inside: the tape hangs on the flange that was bent. */
export function sillBentFlange(): string {
  return (
    flat(box([110, 96], [1780, 1236]), tint.dust) + post() + sill() + flanges() + tape() + sizes()
  );
}

/** The post behind, that the flange should have lain against. */
function post(): string {
  return (
    edge(box([180, 130], [110, 1180]), tint.ironLight) +
    shade(box([254, 133], [34, 1174]), 0.1) +
    lettering('rear post', [246, 720], { size: 38, anchor: 'middle', turn: -90, halo: 'none' })
  );
}

/** Broken off at the right, where it goes on to the front. */
function sill(): string {
  const broken = `M1860 ${TOP}L${CORNER} ${TOP}V${BOTTOM}H1830C1850 ${BOTTOM - 160} 1800 ${BOTTOM - 300} 1836 ${BOTTOM - 420}C1850 ${TOP + 180} 1816 ${TOP + 100} 1860 ${TOP}Z`;
  const holes = spread(620, 1760, 8)
    .map(
      (x) => fine(disc([x, TOP + 46], 20), tint.dust) + fine(disc([x, BOTTOM - 46], 20), tint.dust),
    )
    .join('');
  return (
    edge(broken, tint.steel) +
    gleam(box([CORNER + 6, TOP + 6], [1310, 26]), 0.35) +
    fine(
      line([CORNER, TOP + 92], [1838, TOP + 92]) + line([CORNER, BOTTOM - 92], [1812, BOTTOM - 92]),
    ) +
    holes +
    edge(
      `M1860 ${TOP}C1816 ${TOP + 100} 1850 ${TOP + 180} 1836 ${BOTTOM - 420}C1800 ${BOTTOM - 300} 1850 ${BOTTOM - 160} 1830 ${BOTTOM}`,
    )
  );
}

function flanges(): string {
  const bent = outline(
    [CORNER, TOP],
    [FOUND + 14, TOP + 34],
    [FOUND, TOP + 180],
    [FOUND + 10, TOP + 390],
    [FOUND - 6, BOTTOM - 150],
    [FOUND + 16, BOTTOM - 26],
    [CORNER, BOTTOM],
  );
  return (
    hidden(outline([CORNER, TOP], [MEANT, TOP], [MEANT, BOTTOM], [CORNER, BOTTOM])) +
    edge(bent, tint.steelDark) +
    shade(
      outline([CORNER, TOP], [FOUND + 70, TOP + 20], [FOUND + 70, BOTTOM - 16], [CORNER, BOTTOM]),
      0.14,
    )
  );
}

function tape(): string {
  const y = 770;
  const ticks = spread(FOUND + 5 * PER_MM, FOUND + 85 * PER_MM, 17)
    .map((x, index) => line([x, y], [x, y + (index % 2 === 0 ? 26 : 46)]))
    .join('');
  const numbers = spread(1, 8, 8)
    .map((centimetres) =>
      lettering(String(centimetres * 10), [FOUND + centimetres * 10 * PER_MM, y + 86], {
        size: 30,
        anchor: 'middle',
        halo: 'none',
      }),
    )
    .join('');
  const hook =
    edge(
      outline(
        [FOUND - 14, y - 44],
        [FOUND + 44, y - 44],
        [FOUND + 44, y + 148],
        [FOUND - 14, y + 148],
      ),
      tint.steelLight,
    ) +
    edge(disc([FOUND + 22, y + 20], 9), tint.steelDark) +
    edge(disc([FOUND + 22, y + 84], 9), tint.steelDark);
  const casing =
    block([1440, y - 130], [300, 290], tint.red, 50) +
    edge(disc([1590, y + 15], 84), tint.steelDark) +
    fine(disc([1590, y + 15], 60), tint.steel);
  return (
    shade(box([FOUND, y + 104], [1050, 16]), 0.14) +
    edge(box([FOUND, y], [1050, 104]), '#ead27a') +
    coloured(line([FOUND + 6, y + 98], [1436, y + 98]), '#c9ad55', 6) +
    fine(ticks) +
    numbers +
    hook +
    casing
  );
}

function sizes(): string {
  return (
    dimension([MEANT, BOTTOM + 10], [FOUND, BOTTOM + 10], {
      text: '11 mm',
      offset: -110,
      size: 40,
    }) +
    leader([MEANT, TOP + 60], [420, 280], 'as it should be') +
    leader([FOUND + 60, TOP + 80], [560, 380], 'as found, bent inwards') +
    leader([FOUND + 20, 730], [760, 640], 'hook on the wrong one') +
    leader([1400, BOTTOM - 120], [1300, 1240], 'inner sill, to the front')
  );
}
