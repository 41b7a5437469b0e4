import { arrow, leader } from '../dimension.ts';
import { axis, coloured, edge, fine, flat, hidden, shade, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, line, spread } from '../shape.ts';
import { block, lyingBar } from '../solid.ts';
import { dialIndicator, dialStand } from './dial.ts';

const BED_TOP = 1110;
const CENTRE = 720;

/** Where the run-out of the spindle nose is read. */
export function headstockDial(): string {
  return (
    flat(box([110, 100], [1780, 1010]), tint.dust) +
    bed() +
    headstock() +
    nose() +
    dialStand([1540, BED_TOP], { armY: 300, armTo: 940 }) +
    block([930, 262], [56, 76], tint.steelDark, 8) +
    dialIndicator([850, 300], { radius: 172, touchY: CENTRE - 126, needle: -62, marking: '1 µm' }) +
    turning() +
    names()
  );
}

function bed(): string {
  return (
    block([110, BED_TOP], [1780, 200], tint.green) +
    edge(box([110, BED_TOP], [1780, 40]), tint.steelLight) +
    fine(line([150, 1200], [1850, 1200]))
  );
}

function headstock(): string {
  const oiler =
    edge(box([402, 372], [36, 66]), tint.brass) +
    edge(disc([420, 352], 34), tint.brass) +
    fine(disc([420, 352], 14), tint.cream);
  const bolt = (x: number): string => block([x, 420], [60, 34], tint.steel, 4);
  return (
    block([170, 560], [500, 550], tint.green) +
    oiler +
    bolt(210) +
    bolt(560) +
    block([186, 450], [468, 112], tint.greenDark, 14) +
    fine(line([170, 1030], [670, 1030])) +
    shade(box([174, 1034], [492, 72]), 0.1) +
    edge(disc([420, 880], 30), tint.steelLight) +
    fine(disc([420, 880], 12), tint.steelDark)
  );
}

/** Flange, plain register, thread; the taper bore behind is dashed. */
function nose(): string {
  const threads = spread(924, 1110, 13).map((x) => line([x, CENTRE + 112], [x + 10, CENTRE - 112]));
  const bore =
    line([1130, CENTRE - 74], [560, CENTRE - 46], [560, CENTRE + 46], [1130, CENTRE + 74]) +
    line([560, CENTRE - 34], [200, CENTRE - 34]) +
    line([560, CENTRE + 34], [200, CENTRE + 34]);
  return (
    lyingBar([670, CENTRE - 100], [40, 200], tint.steelLight) +
    lyingBar([710, CENTRE - 176], [64, 352], tint.steel, 6) +
    lyingBar([774, CENTRE - 126], [136, 252], tint.steelLight) +
    lyingBar([910, CENTRE - 112], [220, 224], tint.steel, 10) +
    fine(threads.join('')) +
    hidden(bore) +
    axis(line([140, CENTRE], [1330, CENTRE]))
  );
}

function turning(): string {
  const [x, reach] = [1200, 150];
  const sweep = `M${x} ${CENTRE - reach}A56 ${reach} 0 0 1 ${x + 10} ${CENTRE + reach - 2}`;
  return (
    coloured(sweep, tint.red, 6) +
    arrow([x - 14, CENTRE + reach + 6], 168, { colour: tint.red, length: 46 }) +
    lettering('turned by hand', [1106, CENTRE - reach - 42], { size: 40 })
  );
}

function names(): string {
  return (
    leader([850, CENTRE + 90], [940, 1020], 'ground register') +
    leader([1040, CENTRE + 80], [1130, 940], 'thread') +
    leader([640, CENTRE - 51], [560, 250], 'taper bore')
  );
}
