import type { Calculation } from './calculation.ts';

/** Area a volume of paint covers when none is lost. */
export const paintCoverage: Calculation = {
  name: 'paint-coverage',
  title: 'Theoretical coverage of a paint',
  inputs: {
    VS: { what: 'volume solids of the paint', quantity: 'ratio', unit: '%', above: 0 },
    DFT: { what: 'dry film thickness', quantity: 'length', unit: 'µm', above: 0 },
  },
  result: { quantity: 'spreading-rate', unit: 'm²/L' },
  formula: 'VS/DFT',
  requires: [{ holds: 'VS <= 1', otherwise: 'the volume solids are above 100 %' }],
  source: 'Theoretical Spreading Rate / Coverage, general information (scribd.com 343849341)',
  assumptions: [
    'smooth surface, even film, nothing lost',
    'volume solids, not solids by weight, of the paint as it comes in the can',
    'all volatile parts leave the film, and nothing else does',
  ],
  examples: [
    {
      source: 'Theoretical Spreading Rate / Coverage: 65 % at 125 µm (scribd.com 343849341)',
      inputs: { VS: '65 %', DFT: '125 µm' },
      result: '5.2 m²/L',
      tolerance: 0.05,
    },
    {
      source: 'Theoretical Spreading Rate / Coverage: 100 % at 1 mil (scribd.com 343849341)',
      inputs: { VS: '100 %', DFT: '1 thou' },
      result: '1604 ft²/gal(US)',
      tolerance: 0.5,
    },
    {
      source:
        'common practice, no source: 65 % at 5 mil by exact arithmetic with the gallon of 231 in³',
      inputs: { VS: '65 %', DFT: '5 thou' },
      result: '208.5416666666667 ft²/gal(US)',
      tolerance: 1e-10,
    },
  ],
};
