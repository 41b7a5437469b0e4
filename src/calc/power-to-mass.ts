import type { Calculation } from './calculation.ts';

/** Power for each unit of mass. */
export const powerToMass: Calculation = {
  name: 'power-to-mass',
  title: 'Power to mass',
  inputs: {
    P: { what: 'power', quantity: 'power', unit: 'kW', above: 0 },
    m: { what: 'mass', quantity: 'mass', unit: 'kg', above: 0 },
  },
  result: { quantity: 'specific-power', unit: 'kW/t' },
  formula: 'P/m',
  source: 'What Is a Power to Weight Ratio? (roadsafetynz.org)',
  assumptions: [
    'peak power at the place it is stated for: engine, gearbox output or wheels',
    'mass as stated: empty, ready to run or loaded',
  ],
  examples: [
    {
      source: 'What Is a Power to Weight Ratio?: 98 kW and 1380 kg (roadsafetynz.org)',
      inputs: { P: '98 kW', m: '1380 kg' },
      result: '71 kW/t',
      tolerance: 0.5,
    },
    {
      source:
        'Power-to-weight ratio: a diesel engine of 250 kW and 380 kg, printed 0.65 kW/kg (calculatorsedge.com), recomputed by exact arithmetic',
      inputs: { P: '250 kW', m: '380 kg' },
      result: '657.8947368421053 W/kg',
      tolerance: 1e-10,
    },
  ],
};
