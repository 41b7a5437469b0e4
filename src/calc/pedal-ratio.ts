import type { Calculation } from './calculation.ts';

/** Leverage of a pedal: pad to pivot over pushrod to pivot. */
export const pedalRatio: Calculation = {
  name: 'pedal-ratio',
  title: 'Pedal ratio',
  inputs: {
    l_p: {
      what: 'distance from the pivot to the middle of the pad',
      quantity: 'length',
      unit: 'mm',
      above: 0,
    },
    l_r: {
      what: 'distance from the pivot to the pushrod',
      quantity: 'length',
      unit: 'mm',
      above: 0,
    },
  },
  result: { quantity: 'ratio', unit: '1' },
  formula: 'l_p/l_r',
  requires: [
    { holds: 'l_p >= l_r', otherwise: 'the pushrod is farther from the pivot than the pad' },
  ],
  source: 'law of the lever; method of measuring read at brakepower.com and jalopyjournal.com',
  assumptions: [
    'both distances straight from the pivot, square to the force there',
    'the pushrod is square to its lever in the part of the travel that counts',
  ],
  caution:
    'A higher ratio also needs more travel: the pedal must not reach the floor before the brakes are full on.',
  examples: [
    {
      source: 'jalopyjournal.com thread 703896, 10 in over 1.75 in, published as 5.7',
      inputs: { l_p: '10 in', l_r: '1.75 in' },
      result: '5.7 1',
      tolerance: 0.05,
    },
    {
      source: 'board.moparts.org post 1235219, 14 in over 2 in, published as 7',
      inputs: { l_p: '14 in', l_r: '2 in' },
      result: '7 1',
      tolerance: 1e-12,
    },
    {
      source: 'the first pedal by exact arithmetic',
      inputs: { l_p: '10 in', l_r: '1.75 in' },
      result: '5.714285714285714 1',
      tolerance: 1e-12,
    },
  ],
};
