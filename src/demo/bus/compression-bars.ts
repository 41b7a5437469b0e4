import { axis, cut, edge, fine, flat, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, line, spread } from '../shape.ts';
import { lyingBar, standingBar } from '../solid.ts';

/** As found and as it is now, in bar, cylinder by cylinder. */
const AUGUST = [9.2, 8.9, 9.1, 7.4] as const;
const MARCH = [10.1, 10.0, 10.2, 9.9] as const;
const PLACES = [430, 810, 1190, 1570] as const;
const BASE = 880;
const PER_BAR = 60;

/** Two bars above each cylinder. */
export function compressionBars(): string {
  return (
    flat(box([110, 96], [1780, 1240]), tint.dust) +
    grid() +
    block() +
    PLACES.map(cylinder).join('') +
    PLACES.map(pair).join('') +
    legend()
  );
}

function grid(): string {
  const lines = [2, 4, 6, 8, 10]
    .map((bar) => line([240, BASE - bar * PER_BAR], [1790, BASE - bar * PER_BAR]))
    .join('');
  const numbers = [0, 2, 4, 6, 8, 10]
    .map((bar) =>
      lettering(String(bar), [210, BASE - bar * PER_BAR + 15], {
        size: 34,
        anchor: 'end',
        halo: 'none',
      }),
    )
    .join('');
  return (
    `<g stroke-opacity=".35">${fine(lines)}</g>` +
    numbers +
    edge(line([240, BASE], [1790, BASE])) +
    lettering('bar', [210, BASE - 11 * PER_BAR + 15], { size: 34, anchor: 'end', halo: 'none' })
  );
}

function pair(x: number, index: number): string {
  const [before = 0, after = 0] = [AUGUST[index], MARCH[index]];
  const bar = (left: number, value: number): string =>
    box([left, BASE - value * PER_BAR], [96, value * PER_BAR]);
  const value = (left: number, text: number): string =>
    lettering(text.toFixed(1), [left + 48, BASE - text * PER_BAR - 18], {
      size: 38,
      anchor: 'middle',
    });
  return (
    cut(bar(x - 112, before), tint.steelLight) +
    edge(bar(x + 16, after), tint.greenDark) +
    value(x - 112, before) +
    value(x + 16, after)
  );
}

/** The block cut through its four bores, below the bars that they gave. */
function block(): string {
  const bores = PLACES.map((x) => box([x - 110, 930], [220, 300])).join('');
  return (
    cut(box([240, 930], [1550, 300]) + bores, tint.iron) +
    lyingBar([240, 900], [1550, 30], tint.steel)
  );
}

function cylinder(x: number, index: number): string {
  const top = [960, 1050, 1050, 960][index] ?? 960;
  const rings = fine(
    spread(top + 22, top + 62, 3)
      .map((y) => line([x - 104, y], [x + 104, y]))
      .join(''),
  );
  const rod = edge(`M${x - 20} ${top + 90}H${x + 20}L${x + 30} 1290H${x - 30}Z`, tint.steel);
  return (
    rod +
    standingBar([x - 106, top], [212, 120], tint.steelLight, 8) +
    rings +
    fine(`M${x - 18} ${top + 90}a18 18 0 1 0 36 0a18 18 0 1 0 -36 0Z`, tint.steelDark) +
    axis(line([x, 910], [x, 1320])) +
    lettering(String(index + 1), [x + 70, 1300], { size: 52, anchor: 'middle', halo: tint.dust })
  );
}

function legend(): string {
  return (
    cut(box([330, 130], [84, 56]), tint.steelLight) +
    lettering('August', [438, 174], { size: 44 }) +
    edge(box([760, 130], [84, 56]), tint.greenDark) +
    lettering('March', [868, 174], { size: 44 })
  );
}
