import type { Calculation } from './calculation.ts';

/** Turns of the engine for one turn of the driven wheels: gearbox, transfer gearbox and final drive. */
export const overallRatio: Calculation = {
  name: 'overall-ratio',
  title: 'Overall gear ratio',
  inputs: {
    i_g: { what: 'ratio of the gear', quantity: 'ratio', unit: '1', above: 0 },
    i_t: {
      what: 'ratio of the transfer gearbox',
      quantity: 'ratio',
      unit: '1',
      otherwise: '1 1',
      above: 0,
    },
    i_f: { what: 'ratio of the final drive', quantity: 'ratio', unit: '1', above: 0 },
  },
  result: { quantity: 'ratio', unit: '1' },
  formula: 'i_g*i_t*i_f',
  source: 'product of the ratios in series, common practice; worked at high-impact.net',
  assumptions: [
    'each ratio is turns in for one turn out',
    'no transfer gearbox unless its ratio is given',
    'no slip in a clutch or torque converter',
  ],
  examples: [
    {
      source: 'high-impact.net, first gear 6.32, low range 2.72, axle 4.56, published as 78.39',
      inputs: { i_g: '6.32 1', i_t: '2.72 1', i_f: '4.56 1' },
      result: '78.39 1',
      tolerance: 0.005,
    },
    {
      source: 'the same gears by exact arithmetic',
      inputs: { i_g: '6.32 1', i_t: '2.72 1', i_f: '4.56 1' },
      result: '78.388224 1',
      tolerance: 1e-12,
    },
    {
      source:
        'common practice, no source: made-up inputs without a transfer gearbox, plain arithmetic',
      inputs: { i_g: '0.85 1', i_f: '3.9 1' },
      result: '3.315 1',
      tolerance: 1e-12,
    },
  ],
};
