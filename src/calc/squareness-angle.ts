import type { Calculation } from './calculation.ts';

/**
 * How far the corners of a frame's rectangle are from 90°, from its sides and diagonals.
 *
 * The law of cosines for the two diagonals of a parallelogram, one taken from the other, is d_1² − d_2² = 4·a·b·cos α,
 * where α is the angle of the corners that d_1 joins; 90° − α is the result.
 */
export const squarenessAngle: Calculation = {
  name: 'squareness-angle',
  title: 'Out-of-square angle, from sides and diagonals',
  inputs: {
    a: { what: 'long side', quantity: 'length', unit: 'mm', above: 0 },
    b: { what: 'short side', quantity: 'length', unit: 'mm', above: 0 },
    d_1: { what: 'first diagonal', quantity: 'length', unit: 'mm', above: 0 },
    d_2: { what: 'second diagonal', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'angle', unit: '°' },
  formula: 'asin((d_1^2 - d_2^2)/(4*a*b))',
  requires: [
    {
      holds: 'abs(d_1^2 - d_2^2) < 4*a*b',
      otherwise: 'the diagonals differ by more than these sides allow',
    },
    {
      // In a parallelogram d_1² + d_2² = 2(a² + b²). Two per cent of it is about one per cent of a length.
      holds: 'abs(d_1^2 + d_2^2 - 2*(a^2 + b^2)) < 0.04*(a^2 + b^2)',
      otherwise:
        'the diagonals do not fit the sides: one of the four was taken between other points',
    },
  ],
  source: 'law of cosines for the two diagonals of a parallelogram; common practice',
  assumptions: [
    'opposite sides are equal; where they differ a little, each side is the mean of its pair',
    'the four points lie in one plane: a twist does not show here',
    'positive where the first diagonal is the longer: the two corners it joins are less than 90°',
  ],
  examples: [
    {
      source:
        'algebra.com, question 972914: parallelogram of 7 and 9 cm with diagonals 8 and 14 cm, corner about 58.4°',
      inputs: { a: '9 cm', b: '7 cm', d_1: '14 cm', d_2: '8 cm' },
      result: '31.6 °',
      tolerance: 0.05,
    },
    {
      source: 'the same parallelogram, asin(11/21) computed',
      inputs: { a: '9 cm', b: '7 cm', d_1: '14 cm', d_2: '8 cm' },
      result: '31.58813550520117 °',
      tolerance: 1e-10,
    },
    {
      source:
        'common practice, no source: diagonals from the coordinates of a frame made 0.25° out of square',
      inputs: { a: '2400 mm', b: '1000 mm', d_1: '2604.0245552926 mm', d_2: '2595.9692054093 mm' },
      result: '0.25 °',
      tolerance: 1e-10,
    },
  ],
};
