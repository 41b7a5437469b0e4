import type { Calculation } from './calculation.ts';

/** First diagonal less second of a frame's rectangle: 0 when it is square. */
export const squarenessDiagonals: Calculation = {
  name: 'squareness-diagonals',
  title: 'Difference of the two diagonals',
  inputs: {
    d_1: { what: 'first diagonal', quantity: 'length', unit: 'mm', above: 0 },
    d_2: { what: 'second diagonal', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'length', unit: 'mm' },
  formula: 'd_1 - d_2',
  source: 'common practice',
  assumptions: [
    'opposite sides are equal: unequal sides make unequal diagonals in a frame that is square',
    'the four points are the same on both sides, such as the centres of paired holes',
    'the four points lie in one plane: a twist does not show here',
  ],
  examples: [
    {
      source: 'common practice, no source: plain arithmetic',
      inputs: { d_1: '2604.0 mm', d_2: '2596.0 mm' },
      result: '8.0 mm',
      tolerance: 1e-9,
    },
    {
      source: 'common practice, no source: the other diagonal longer',
      inputs: { d_1: '140.4 mm', d_2: '142.8 mm' },
      result: '-2.4 mm',
      tolerance: 1e-9,
    },
  ],
};
