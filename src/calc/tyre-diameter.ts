import type { Calculation } from './calculation.ts';

/** Design diameter of an unloaded tyre by the metric marking: width, aspect ratio, rim. */
export const tyreDiameter: Calculation = {
  name: 'tyre-diameter',
  title: 'Diameter of a tyre, from its marking',
  inputs: {
    w: { what: 'section width', quantity: 'length', unit: 'mm', above: 0 },
    AR: { what: 'aspect ratio', quantity: 'ratio', unit: '%', above: 0 },
    d: { what: 'rim diameter', quantity: 'length', unit: 'in', above: 0 },
  },
  result: { quantity: 'length', unit: 'mm' },
  formula: 'd + 2*w*AR',
  requires: [
    { holds: 'AR <= 1.5', otherwise: 'the aspect ratio is no percentage: 55 % is marked 55' },
  ],
  source:
    'metric tyre marking as in ISO 4000-1 (from memory); the same sum worked at berettaspeed.com',
  assumptions: [
    'design size of a new tyre without load; makers may differ by some per cent',
    'the rim diameter of the marking is the nominal one, in inches of 25.4 mm',
  ],
  caution:
    'A tyre of the right diameter may still have the wrong load index or speed symbol, or touch the body on full lock.',
  examples: [
    {
      source: 'berettaspeed.com, 205/55 R16, published as 24.88 in',
      inputs: { w: '205 mm', AR: '55 %', d: '16 in' },
      result: '24.88 in',
      tolerance: 0.005,
    },
    {
      source: 'ecomodder.com, 235/45 R17, published as 25.327 in',
      inputs: { w: '235 mm', AR: '45 %', d: '17 in' },
      result: '25.327 in',
      tolerance: 0.0005,
    },
    {
      source: 'fordterritory.info, 275/40 R20, published as 728 mm',
      inputs: { w: '275 mm', AR: '40 %', d: '20 in' },
      result: '728 mm',
      tolerance: 0.5,
    },
    {
      source: '205/55 R16 by exact arithmetic',
      inputs: { w: '205 mm', AR: '55 %', d: '16 in' },
      result: '631.9 mm',
      tolerance: 1e-9,
    },
  ],
};
