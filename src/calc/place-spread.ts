import type { Calculation } from './calculation.ts';
import { listedNames } from './listed-names.ts';
import { places } from './places.ts';

/** Largest less least over several places: how far a surface or a gap runs out. */
export const placeSpread: Calculation = {
  name: 'place-spread',
  title: 'Spread over several places, largest less least',
  inputs: {},
  many: places,
  result: { quantity: 'length', unit: 'mm' },
  formula: (n) => `max(${listedNames(n).join(', ')}) - min(${listedNames(n).join(', ')})`,
  source: 'range of a set of data, NIST weights and measures course, glossary (nist.gov)',
  assumptions: [
    'the largest and the least place were among those measured',
    'it grows with the number of places: compare spreads over the same places only',
  ],
  examples: [
    {
      source: 'Netmath lexicon, range of a distribution (lexique.netmath.ca), numbers taken as mm',
      inputs: { places: ['3 mm', '4 mm', '7 mm', '9 mm', '12 mm', '15 mm', '17 mm'] },
      result: '14 mm',
      tolerance: 1e-12,
    },
    {
      source: 'common practice, no source: plain arithmetic',
      inputs: { places: ['1.2 mm', '1.1 mm', '0.7 mm'] },
      result: '0.5 mm',
      tolerance: 1e-12,
    },
  ],
};
