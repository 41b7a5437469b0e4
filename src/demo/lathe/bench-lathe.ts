import { dimension, leader } from '../dimension.ts';
import { axis, edge, fine, flat, shade, tint } from '../ink.ts';
import { box, disc, line, outline, spread } from '../shape.ts';
import { block, handwheel, handwheelEdge, lyingBar, screwThread, standingBar } from '../solid.ts';

const BED_TOP = 850;
const CENTRE = 720;

/** The whole lathe from the front, its parts named. */
export function benchLathe(): string {
  return bench() + drive() + bed() + headstock() + chuck() + tailstock() + carriage() + names();
}

function bench(): string {
  const grain =
    line([260, 1150], [900, 1153], [1700, 1148]) + line([420, 1170], [1100, 1167], [1820, 1171]);
  const leg = (x: number): string => block([x, 1190], [110, 178], tint.woodDark);
  const drawer =
    block([640, 1212], [700, 64], tint.wood, 6) + edge(disc([990, 1244], 14), tint.brass);
  return (
    flat(box([100, 96], [1800, 1034]), tint.dust) +
    leg(250) +
    leg(1660) +
    fine(box([360, 1190], [1300, 104]), tint.woodDark) +
    shade(box([360, 1190], [1300, 18])) +
    drawer +
    edge(box([120, 1130], [1760, 60], 4), tint.wood) +
    fine(grain)
  );
}

/** Motor over countershaft over spindle; the bracket stands behind the headstock. */
function drive(): string {
  const post = (x: number): string => standingBar([x, 296], [30, 560], tint.ironDark);
  const ribs = fine(
    spread(164, 276, 6)
      .map((y) => line([430, y], [640, y]))
      .join(''),
  );
  const motor =
    lyingBar([404, 138], [262, 160], tint.steelDark, 22) +
    ribs +
    block([450, 112], [110, 40], tint.steel, 6);
  const plate = edge(box([372, 298], [330, 20]), tint.iron);
  const pulley =
    lyingBar([354, 206], [50, 20], tint.steelLight) + lyingBar([312, 176], [42, 80], tint.steel, 4);
  const shaft =
    lyingBar([290, 418], [430, 24], tint.steelLight) +
    lyingBar([312, 322], [42, 216], tint.steel, 4);
  const steps = [50, 68, 86].map((radius, index) =>
    lyingBar([446 + index * 46, 430 - radius], [46, 2 * radius], tint.steel, 4),
  );
  const bearing = (x: number): string => block([x, 394], [46, 72], tint.iron, 8);
  const belt = edge(box([320, 200], [26, 240]), tint.leather);
  return (
    post(396) +
    post(640) +
    plate +
    motor +
    pulley +
    shaft +
    steps.join('') +
    bearing(382) +
    bearing(626) +
    belt
  );
}

function bed(): string {
  const foot = (x: number): string =>
    edge(
      outline(
        [x + 24, 1000],
        [x + 156, 1000],
        [x + 180, 1112],
        [x + 180, 1130],
        [x, 1130],
        [x, 1112],
      ),
      tint.greenDark,
    ) + shade(outline([x + 28, 1003], [x + 152, 1003], [x + 156, 1026], [x + 24, 1026]));
  const bracket = (x: number): string => block([x, 922], [56, 50], tint.ironDark, 8);
  return (
    foot(400) +
    foot(1480) +
    block([360, BED_TOP], [1340, 150], tint.green) +
    edge(box([360, BED_TOP], [1340, 26]), tint.steelLight) +
    fine(line([386, 900], [1674, 900])) +
    lyingBar([330, 938], [1420, 18], tint.steelLight) +
    screwThread([422, 938], [1212, 18]) +
    bracket(366) +
    bracket(1634) +
    handwheelEdge([1750, 947], 56)
  );
}

function headstock(): string {
  const cap = (x: number): string => block([x + 6, 622], [88, 34], tint.greenDark, 6);
  const pedestal = (x: number): string => block([x, 650], [100, 200], tint.green) + cap(x);
  const oiler = (x: number): string =>
    edge(box([x - 8, 586], [16, 36]), tint.brass) + edge(disc([x, 576], 16), tint.brass);
  const steps = [86, 68, 50].map((radius, index) =>
    lyingBar([462 + index * 44, CENTRE - radius], [44, 2 * radius], tint.steel, 4),
  );
  const spindle =
    lyingBar([322, CENTRE - 26], [40, 52], tint.steelLight) +
    lyingBar([690, CENTRE - 34], [30, 68], tint.steelLight);
  const belt = edge(box([502, 366], [26, 438]), tint.leather);
  return (
    spindle +
    block([362, 800], [330, 50], tint.green) +
    steps.join('') +
    belt +
    pedestal(362) +
    pedestal(592) +
    oiler(412) +
    oiler(642)
  );
}

function chuck(): string {
  const jaw = outline([806, 698], [838, 698], [838, 706], [870, 706], [870, 734], [806, 734]);
  const outer = (y: number): string => block([806, y], [34, 34], tint.steelLight);
  return (
    lyingBar([720, CENTRE - 60], [22, 120], tint.steelDark) +
    lyingBar([742, CENTRE - 92], [64, 184], tint.steel, 8) +
    fine(line([760, CENTRE - 88], [760, CENTRE + 88])) +
    edge(disc([782, CENTRE], 12), tint.steelDark) +
    outer(636) +
    outer(770) +
    edge(jaw, tint.steelLight)
  );
}

function carriage(): string {
  const apron = block([940, 884], [250, 100], tint.green, 12) + handwheel([1012, 934], 46, -60);
  const lever =
    standingBar([1114, 912], [18, 56], tint.steelLight, 8) +
    edge(disc([1123, 908], 14), tint.woodDark);
  const saddle = block([900, 812], [330, 72], tint.greenDark, 8) + handwheel([1070, 848], 32, -30);
  const slides =
    block([976, 776], [190, 36], tint.steel) + block([1000, 746], [210, 30], tint.steelLight);
  const topHandle = lyingBar([1210, 754], [36, 14], tint.steel) + handwheelEdge([1246, 761], 32);
  const post =
    block([1016, 688], [76, 58], tint.steelDark) +
    edge(box([976, 710], [130, 18]), tint.steelLight) +
    standingBar([1041, 660], [26, 28], tint.steel, 4);
  return apron + lever + saddle + slides + topHandle + post;
}

function tailstock(): string {
  const body = outline(
    [1420, 660],
    [1560, 660],
    [1580, 690],
    [1580, 760],
    [1596, BED_TOP],
    [1404, BED_TOP],
    [1420, 760],
  );
  const quill = lyingBar([1352, CENTRE - 26], [68, 52], tint.steelLight);
  const point = edge(
    outline([1352, CENTRE - 17], [1352, CENTRE + 17], [1308, CENTRE]),
    tint.steelLight,
  );
  const wheel =
    lyingBar([1580, CENTRE - 14], [30, 28], tint.steelLight) + handwheelEdge([1610, CENTRE], 62);
  const lock =
    standingBar([1482, 610], [16, 50], tint.steel) + edge(disc([1490, 602], 17), tint.woodDark);
  const base =
    fine(line([1413, 800], [1587, 800])) +
    shade(outline([1410, 822], [1590, 822], [1593, 846], [1407, 846]));
  return quill + point + wheel + lock + edge(body, tint.green) + base;
}

function names(): string {
  return (
    axis(line([280, CENTRE], [1720, CENTRE])) +
    dimension([1620, BED_TOP], [1620, CENTRE], { text: '65', offset: -130 }) +
    leader([610, 200], [790, 150], 'motor') +
    leader([566, 400], [790, 340], 'countershaft') +
    leader([340, 704], [278, 610], 'spindle') +
    leader([400, 806], [328, 806], 'headstock') +
    leader([1054, 702], [1130, 540], 'carriage') +
    leader([1500, 690], [1590, 540], 'tailstock') +
    leader([650, 970], [710, 1064], 'bed') +
    leader([1240, 947], [1190, 1064], 'leadscrew')
  );
}
