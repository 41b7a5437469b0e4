import type { Calculation } from './calculation.ts';

/** Twist of a machine bed between two places, from a level across the ways. */
export const bedTwist: Calculation = {
  name: 'bed-twist',
  title: 'Twist of a bed, with a level on a bridge',
  inputs: {
    s1: { what: 'reading of the level at the first place', quantity: 'slope', unit: 'mm/m' },
    s2: { what: 'reading of the level at the second place', quantity: 'slope', unit: 'mm/m' },
    B: { what: 'length of the bridge across the ways', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'length', unit: 'mm' },
  formula: '(s2 - s1)*B',
  source: 'common practice; a level’s reading is the rise over a metre (eichhorn-gme.com)',
  assumptions: [
    'the level stands on the same bridge, the same way round, at both places, so that its zero cancels',
    'divisions of the vial were turned into a slope: 3 divisions of 0.02 mm/m are 0.06 mm/m',
    'positive when the side the level calls higher rises from the first place to the second',
  ],
  examples: [
    {
      source:
        'common practice, no source: 3 divisions of 0.02 mm/m over a bridge of 250 mm, plain arithmetic',
      inputs: { s1: '0 mm/m', s2: '0.06 mm/m', B: '250 mm' },
      result: '0.015 mm',
      tolerance: 1e-9,
    },
    {
      source: 'common practice, no source: the same twist on a bed that is not level',
      inputs: { s1: '0.08 mm/m', s2: '0.02 mm/m', B: '250 mm' },
      result: '-0.015 mm',
      tolerance: 1e-9,
    },
  ],
};
