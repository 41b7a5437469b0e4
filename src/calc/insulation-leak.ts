import type { Calculation } from './calculation.ts';

/** Current that leaks through an insulation, by Ohm's law. */
export const insulationLeak: Calculation = {
  name: 'insulation-leak',
  title: 'Leakage current through an insulation',
  inputs: {
    U: { what: 'voltage across the insulation', quantity: 'voltage', unit: 'V', above: 0 },
    R: { what: 'insulation resistance', quantity: 'resistance', unit: 'MΩ', above: 0 },
  },
  result: { quantity: 'current', unit: 'mA' },
  formula: 'U/R',
  source: "Ohm's law; insulation resistance as leakage current under a voltage (product.tdk.com)",
  assumptions: [
    'direct voltage, after the charging current has died away',
    'resistance measured with about this voltage: insulation that is wet or cracked leaks more at a higher one',
    'an alternating voltage drives a capacitive current besides, which this leaves out',
  ],
  caution:
    'A tester puts hundreds of volts on the wiring, and wiring keeps a charge. A small leak worked out here does not make a mains or high-voltage circuit safe to touch.',
  examples: [
    {
      source: 'common practice, no source: 500 V on 1 MΩ, plain arithmetic',
      inputs: { U: '500 V', R: '1 MΩ' },
      result: '0.5 mA',
      tolerance: 1e-12,
    },
    {
      source: 'common practice, no source: made-up readings by exact arithmetic',
      inputs: { U: '13.8 V', R: '47 kΩ' },
      result: '0.2936170212765957 mA',
      tolerance: 1e-13,
    },
  ],
};
