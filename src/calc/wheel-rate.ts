import type { Calculation } from './calculation.ts';

/** Rate of a spring as the wheel feels it. The motion ratio is spring travel to wheel travel, mostly below 1; some books turn it over. */
export const wheelRate: Calculation = {
  name: 'wheel-rate',
  title: 'Wheel rate, from spring rate and motion ratio',
  inputs: {
    k_s: { what: 'rate of the spring', quantity: 'stiffness', unit: 'N/mm', above: 0 },
    MR: {
      what: 'motion ratio, spring travel / wheel travel',
      quantity: 'ratio',
      unit: '1',
      above: 0,
    },
  },
  result: { quantity: 'stiffness', unit: 'N/mm' },
  formula: 'k_s*MR^2',
  source:
    'D. Barton and J. Fieldhouse, Automotive Chassis Engineering (Springer), page 179, equation 3.33',
  assumptions: [
    'the motion ratio was taken near the height the vehicle stands at, over a small travel',
    'bushes and anti-roll bar are left out',
  ],
  examples: [
    {
      source: 'calculator.academy, wheel rate, example 1, printed 256.00 lbf/in',
      inputs: { k_s: '400 lbf/in', MR: '0.80 1' },
      result: '256 lbf/in',
      tolerance: 1e-10,
    },
    {
      source: 'machinecalcs.com, suspension wheel rate, printed about 28.1 N/mm',
      inputs: { k_s: '50 N/mm', MR: '0.75 1' },
      result: '28.1 N/mm',
      tolerance: 0.05,
    },
    {
      source: 'the same spring, 225/8 by exact arithmetic',
      inputs: { k_s: '50 N/mm', MR: '0.75 1' },
      result: '28.125 N/mm',
      tolerance: 1e-12,
    },
  ],
};
