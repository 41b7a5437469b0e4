import type { Calculation } from './calculation.ts';

/** Offset of a round part's axis from the axis it turns about. */
export const eccentricity: Calculation = {
  name: 'eccentricity',
  title: 'Eccentricity, from the run-out',
  inputs: {
    TIR: { what: 'total indicator reading', quantity: 'length', unit: 'mm', least: 0 },
  },
  result: { quantity: 'length', unit: 'mm' },
  formula: 'TIR/2',
  source:
    'Heat treatment, the difference: "for a perfect cylinder the eccentricity is half the TIR" (holtbros-heat-treatment.co.uk)',
  assumptions: ['the surface itself is round: all of the reading comes from the offset'],
  examples: [
    {
      source: 'common practice, no source: plain arithmetic',
      inputs: { TIR: '0.04 mm' },
      result: '0.02 mm',
      tolerance: 1e-12,
    },
  ],
};
