import type { Calculation } from './calculation.ts';

/** Fuel consumption over a distance, from what it took to fill up again. */
export const fuelUsed: Calculation = {
  name: 'fuel-used',
  title: 'Fuel consumption over a distance',
  inputs: {
    V: { what: 'fuel used', quantity: 'volume', unit: 'L', above: 0 },
    s: { what: 'distance driven', quantity: 'length', unit: 'km', above: 0 },
  },
  result: { quantity: 'consumption', unit: 'L/100km' },
  formula: 'V/s',
  source: 'Fuel Consumption Formula (unitpedia.com)',
  assumptions: [
    'the tank was filled to the same mark before and after, on the same ground',
    'the distance is the true one: an odometer is off with other tyres',
  ],
  examples: [
    {
      source: 'Fuel Consumption Formula: 60 L over 800 km (unitpedia.com)',
      inputs: { V: '60 L', s: '800 km' },
      result: '7.5 L/100km',
      tolerance: 0.05,
    },
    {
      source: 'How is fuel consumption calculated: 65 L over 500 km (transpoco.com)',
      inputs: { V: '65 L', s: '500 km' },
      result: '13 L/100km',
      tolerance: 0.5,
    },
    {
      source:
        'common practice, no source: 60 L over 800 km in miles to the gallon, by exact arithmetic',
      inputs: { V: '60 L', s: '800 km' },
      result: '37.66412484424295 mpg(UK)',
      tolerance: 1e-11,
    },
  ],
};
