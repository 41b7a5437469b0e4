import { dimension } from '../dimension.ts';
import { coloured, edge, fine, flat, gleam, shade, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, outline, type Point, polar, spread } from '../shape.ts';
import { numbersFrom } from '../sheet.ts';
import { block, lyingBar } from '../solid.ts';

/** One metre is 1 200 px. */
const [LEFT, RIGHT] = [400, 1600];
const BOTTOM = 1180;
const RIM = 900;
const COVERS = [
  '#7b3f3a',
  '#3f5f7f',
  '#6b7a4a',
  '#a98245',
  '#54474f',
  '#b9b09a',
  '#88603f',
  '#4b6f6a',
] as const;

/** One metre of spines, hanging. */
export function crateOnScale(): string {
  return (
    flat(box([110, 96], [1780, 1236]), tint.dust) +
    beam() +
    books() +
    ropes() +
    scale() +
    crate() +
    tape() +
    dimension([LEFT, BOTTOM + 10], [RIGHT, BOTTOM + 10], { text: '1 m', offset: -90, size: 48 })
  );
}

function beam(): string {
  const grain = coloured('M180 150q300 14 700 0t900 6M240 190q400 -12 800 0t700 -4', '#a57c4b');
  return (
    edge(box([110, 116], [1780, 110]), tint.woodDark) +
    grain +
    block([962, 100], [76, 146], tint.steelDark, 6)
  );
}

/** A ring, a dial that shows kilograms, and a hook. */
function scale(): string {
  const centre: Point = [1000, 420];
  const ticks = spread(-220, 40, 26)
    .map((bearing, index) =>
      line(polar(centre, index % 5 === 0 ? 84 : 94, bearing), polar(centre, 108, bearing)),
    )
    .join('');
  const needle = edge(line(centre, polar(centre, 90, -8)));
  const hook = `M1000 560v28a26 26 0 1 1 -26 26`;
  return (
    coloured('M1000 246v40', tint.ink, 10) +
    edge(`M1000 284a24 24 0 1 0 .1 0Z`) +
    edge(disc(centre, 140), tint.steelDark) +
    fine(disc(centre, 120), tint.paper) +
    gleam(`${disc(centre, 137)}${disc(centre, 126)}`, 0.4) +
    fine(ticks) +
    needle +
    flat(disc(centre, 10), tint.ink) +
    lettering('kg', [1000, 486], { size: 40, anchor: 'middle', halo: 'none' }) +
    coloured(hook, tint.ink, 14)
  );
}

function ropes(): string {
  const rope = (x: number): string =>
    coloured(line([1000, 630], [x, RIM + 30]), tint.ink, 12) +
    coloured(line([1000, 630], [x, RIM + 30]), '#cdb98e', 6);
  return rope(LEFT - 30) + rope(RIGHT + 30);
}

/** Spines from one end to the other, none of them quite alike. */
function books(): string {
  const next = numbersFrom('one metre of novels');
  let x = LEFT;
  let marks = '';
  while (x < RIGHT - 24) {
    const width = Math.min(26 + Math.round(next() * 44), RIGHT - x);
    const top = 800 - Math.round(next() * 90);
    const cover = COVERS[Math.floor(next() * COVERS.length)] ?? COVERS[0];
    marks +=
      edge(box([x, top], [width, BOTTOM - top - 20], 5), cover) +
      gleam(box([x + 5, top + 8], [6, BOTTOM - top - 40]), 0.25) +
      flat(box([x + 5, top + 34], [width - 10, 12]), tint.cream, 0.7);
    x += width;
  }
  return marks;
}

function crate(): string {
  const slat = (y: number, height: number): string =>
    lyingBar([LEFT - 44, y], [RIGHT - LEFT + 88, height], tint.wood, 4);
  const post = (x: number): string =>
    block([x, RIM - 10], [44, BOTTOM - RIM + 30], tint.woodDark, 4) +
    [RIM + 30, BOTTOM - 40].map((y) => fine(disc([x + 22, y], 8), tint.steelLight)).join('');
  return (
    shade(box([LEFT, RIM - 14], [RIGHT - LEFT, 14]), 0.2) +
    slat(RIM, 70) +
    slat(BOTTOM - 90, 90) +
    post(LEFT - 44) +
    post(RIGHT)
  );
}

/** A tape laid along the spines, between the slats. */
function tape(): string {
  const y = 1000;
  const ticks = spread(LEFT, RIGHT, 41)
    .map((x, index) => line([x, y], [x, y + (index % 4 === 0 ? 38 : 20)]))
    .join('');
  const numbers = spread(1, 9, 9)
    .map((ten) =>
      lettering(String(ten * 10), [LEFT + ten * 120, y + 66], {
        size: 26,
        anchor: 'middle',
        halo: 'none',
      }),
    )
    .join('');
  return (
    edge(box([LEFT, y], [RIGHT - LEFT, 76]), '#ead27a') +
    fine(ticks) +
    numbers +
    edge(
      outline([LEFT - 6, y - 12], [LEFT + 18, y - 12], [LEFT + 18, y + 88], [LEFT - 6, y + 88]),
      tint.steelLight,
    )
  );
}
