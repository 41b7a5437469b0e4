import { leader } from '../dimension.ts';
import { cut, fine, flat, tint } from '../ink.ts';
import { lettering } from '../lettering.ts';
import { box, disc, type Point, spread } from '../shape.ts';
import { bend, sheetMetal } from '../sheet-metal.ts';

/** 1.5 mm of new sheet, far too thick so that the loss can be seen: 30 px to the millimetre. */
const NEW = 45;
const PER_MM = 30;

/** The outer skin bulges, the inner one is nearly flat; both end in flanges above and below. */
const OUTER: readonly Point[] = [
  [930, 130],
  [930, 270],
  [700, 300],
  ...bend([590, 450], 150, [285, 185]),
  ...bend([590, 900], 150, [175, 100]),
  [720, 1072],
  [930, 1100],
  [930, 1250],
];
const INNER: readonly Point[] = [
  [975, 130],
  [975, 270],
  [1110, 284],
  ...bend([1110, 384], 100, [275, 355]),
  ...bend([1110, 980], 100, [5, 80]),
  [975, 1100],
  [975, 1250],
];

/** Thickness left, from sound at the top to what was measured near the lower flange, in millimetres. */
const OUTER_LEFT = [
  1.45,
  1.45,
  1.4,
  ...spread(1.36, 1.25, 9),
  ...spread(1, 0.69, 9),
  0.6,
  0.45,
  0.43,
].map((mm) => mm * PER_MM);
const INNER_LEFT = [
  1.45,
  1.45,
  1.42,
  ...spread(1.4, 1.32, 9),
  ...spread(1, 0.56, 9),
  0.45,
  0.43,
].map((mm) => mm * PER_MM);

/** What is left of the left sill, inside the outline of what was there. */
export function sillSection(): string {
  return (
    flat(box([110, 96], [1780, 1236]), tint.dust) +
    floor() +
    asNew() +
    asLeft() +
    measured() +
    names()
  );
}

function floor(): string {
  return (
    cut(
      sheetMetal(
        [
          [1000, 214],
          [1890, 214],
        ],
        34,
      ),
      tint.ironLight,
      'left',
    ) + lettering('floor', [1700, 178], { size: 40 })
  );
}

function asNew(): string {
  return fine(sheetMetal(OUTER, NEW), tint.paper) + fine(sheetMetal(INNER, NEW), tint.paper);
}

function asLeft(): string {
  const scale = [
    [520, 985],
    [590, 1034],
    [720, 1052],
    [840, 1066],
    [1040, 1072],
    [1130, 1052],
    [1186, 980],
  ].map(([x = 0, y = 0]) => flat(disc([x, y], 26, 14), tint.rust, 0.65));
  return (
    scale.join('') +
    cut(sheetMetal(OUTER, OUTER_LEFT), tint.steel) +
    cut(sheetMetal(INNER, INNER_LEFT), tint.steel, 'left')
  );
}

function measured(): string {
  const points: readonly (readonly [Point, Point, string])[] = [
    [[563, 1048], [420, 1130], '0.69 mm'],
    [[724, 1073], [600, 1220], '0.60 mm'],
    [[1126, 1078], [1280, 1150], '0.53 mm'],
    [[976, 1200], [1130, 1290], '0.43 mm'],
  ];
  return points
    .map(([target, elbow, text]) => leader(target, elbow, text) + flat(disc(target, 15), tint.red))
    .join('');
}

function names(): string {
  return (
    leader([442, 620], [380, 560], 'outer skin') +
    leader([1210, 620], [1380, 560], 'inner skin') +
    leader([1228, 900], [1380, 800], 'outline of 1966') +
    leader([915, 200], [760, 190], '1.5 mm when new')
  );
}
