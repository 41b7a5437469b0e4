import type { Calculation } from './calculation.ts';

/** Error of radius over length from two collars turned at one setting. */
export const taperTwoCollars: Calculation = {
  name: 'taper-two-collars',
  title: 'Taper a lathe turns, from two collars',
  inputs: {
    D1: { what: 'diameter of the collar at the chuck', quantity: 'length', unit: 'mm', above: 0 },
    D2: { what: 'diameter of the collar at the end', quantity: 'length', unit: 'mm', above: 0 },
    L: { what: 'distance between the collars', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'slope', unit: 'mm/m' },
  formula: '(D1 - D2)/(2*L)',
  source: 'common practice; the two-collar test (method at industrialmonitordirect.com)',
  assumptions: [
    'both collars turned with one tool at one setting, a light last cut, no tailstock',
    'the bar is stiff enough not to give way at its free end',
    'the tool does not wear between the collars',
    'positive when the end is thinner than the chuck side; this is radius over length, half the taper on diameter',
  ],
  examples: [
    {
      source: 'common practice, no source: made-up diameters by exact arithmetic',
      inputs: { D1: '25.000 mm', D2: '24.988 mm', L: '200 mm' },
      result: '0.03 mm/m',
      tolerance: 1e-9,
    },
    {
      source: 'common practice, no source: the same the other way round',
      inputs: { D1: '24.988 mm', D2: '25.000 mm', L: '200 mm' },
      result: '-30 µm/m',
      tolerance: 1e-6,
    },
  ],
};
