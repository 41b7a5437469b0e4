import type { Calculation } from './calculation.ts';

/** Paint to buy for an area, with the share that is lost. */
export const paintNeeded: Calculation = {
  name: 'paint-needed',
  title: 'Paint needed for an area',
  inputs: {
    A: { what: 'area to paint', quantity: 'area', unit: 'm²', above: 0 },
    n: {
      what: 'number of coats',
      quantity: 'count',
      unit: 'count',
      otherwise: '1 count',
      above: 0,
    },
    DFT: { what: 'dry film thickness of one coat', quantity: 'length', unit: 'µm', above: 0 },
    VS: { what: 'volume solids of the paint', quantity: 'ratio', unit: '%', above: 0 },
    loss: { what: 'share of the paint that is lost', quantity: 'ratio', unit: '%', least: 0 },
  },
  result: { quantity: 'volume', unit: 'L' },
  formula: 'n*A*DFT/(VS*(1 - loss))',
  requires: [
    { holds: 'VS <= 1', otherwise: 'the volume solids are above 100 %' },
    { holds: 'loss < 1', otherwise: 'all of the paint is lost' },
  ],
  source:
    'Paint School, section 16, Calculations and conversions: consumption of paint with loss (scribd.com 738286565)',
  assumptions: [
    'paint as it comes in the can, before thinner is added',
    'every coat has the same film; coats of different paints are worked out one by one',
    'the loss is a share of the paint used, not of the paint that stays on',
  ],
  examples: [
    {
      source:
        'Paint School calculations: tank of 500 m², 200 µm, 85 %, 40 % loss (scribd.com 250225450)',
      inputs: { A: '500 m²', DFT: '200 µm', VS: '85 %', loss: '40 %' },
      result: '196 L',
      tolerance: 0.5,
    },
    {
      source:
        'Paint School calculations: tank of 500 m², 50 µm, 50 %, 40 % loss (scribd.com 250225450)',
      inputs: { A: '500 m²', DFT: '50 µm', VS: '50 %', loss: '40 %' },
      result: '83 L',
      tolerance: 0.5,
    },
    {
      source: 'common practice, no source: two coats on made-up inputs by exact arithmetic',
      inputs: { A: '42 m²', n: '2 count', DFT: '60 µm', VS: '48 %', loss: '35 %' },
      result: '16.15384615384615 L',
      tolerance: 1e-12,
    },
  ],
};
