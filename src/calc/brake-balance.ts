import type { Calculation } from './calculation.ts';

/** Share of the braking force that the front axle gives. */
export const brakeBalance: Calculation = {
  name: 'brake-balance',
  title: 'Front share of the braking force',
  inputs: {
    B_f: { what: 'braking force of the front axle', quantity: 'force', unit: 'N', least: 0 },
    B_r: { what: 'braking force of the rear axle', quantity: 'force', unit: 'N', least: 0 },
  },
  result: { quantity: 'ratio', unit: '%' },
  formula: 'B_f/(B_f + B_r)',
  requires: [{ holds: 'B_f + B_r > 0', otherwise: 'neither axle brakes' }],
  source: 'definition of brake balance, read at brakepower.com',
  assumptions: [
    'both forces at the same pedal force, before any wheel locks',
    'force of an axle: both wheels together',
  ],
  caution:
    'A vehicle whose rear wheels lock before the front ones spins. Judge the balance against the ideal one at hard braking, empty and laden.',
  examples: [
    {
      source: 'common practice, no source: made-up inputs, plain arithmetic',
      inputs: { B_f: '6.2 kN', B_r: '3.1 kN' },
      result: '66.6666666666667 %',
      tolerance: 1e-10,
    },
    {
      source: 'common practice, no source: made-up inputs, exact arithmetic',
      inputs: { B_f: '5320 N', B_r: '2480 N' },
      result: '68.2051282051282 %',
      tolerance: 1e-10,
    },
  ],
};
