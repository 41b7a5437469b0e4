import type { Calculation } from './calculation.ts';

/** Area a volume of paint covers when a share of it is lost. */
export const paintCoveragePractical: Calculation = {
  name: 'paint-coverage-practical',
  title: 'Practical coverage of a paint',
  inputs: {
    C: { what: 'theoretical coverage', quantity: 'spreading-rate', unit: 'm²/L', above: 0 },
    loss: { what: 'share of the paint that is lost', quantity: 'ratio', unit: '%', least: 0 },
  },
  result: { quantity: 'spreading-rate', unit: 'm²/L' },
  formula: 'C*(1 - loss)',
  requires: [{ holds: 'loss < 1', otherwise: 'all of the paint is lost' }],
  source: 'Practical Coverage (corrosionpedia.com)',
  assumptions: [
    'the loss is a share of the paint used: overspray, what stays in can, pot and hose, roughness of the surface',
    'usual losses: 10 to 15 % by brush or roller, about 30 % by airless spray, up to 50 % by conventional spray (scribd.com 290710110)',
  ],
  examples: [
    {
      source: 'Practical Coverage: 100 ft²/gal at 30 % loss (corrosionpedia.com)',
      inputs: { C: '100 ft²/gal(US)', loss: '30 %' },
      result: '70 ft²/gal(US)',
      tolerance: 0.5,
    },
    {
      source:
        'theoretical and practical coverage: 7.57 m²/L at 30 % loss (sorwarchem.blogspot.com)',
      inputs: { C: '7.57 m²/L', loss: '30 %' },
      result: '5.299 m²/L',
      tolerance: 0.0005,
    },
    {
      source: 'common practice, no source: plain arithmetic',
      inputs: { C: '5.2 m²/L', loss: '30 %' },
      result: '3.64 m²/L',
      tolerance: 1e-12,
    },
  ],
};
