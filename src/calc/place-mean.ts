import type { Calculation } from './calculation.ts';
import { listedNames } from './listed-names.ts';
import { places } from './places.ts';

/** Mean over several places of one panel. */
export const placeMean: Calculation = {
  name: 'place-mean',
  title: 'Mean over several places',
  inputs: {},
  many: places,
  result: { quantity: 'length', unit: 'mm' },
  formula: (n) => `(${listedNames(n).join(' + ')})/${n}`,
  source: 'arithmetic mean, JCGM 100:2008 4.2.1',
  assumptions: ['the places stand for the whole panel'],
  examples: [
    {
      source: 'University of Calgary, error analysis, calculating the SD (canu.ucalgary.ca)',
      inputs: { places: ['1.18 m', '1.16 m', '1.18 m', '1.19 m', '1.21 m'] },
      result: '1.184 m',
      tolerance: 1e-12,
    },
    {
      source: 'common practice, no source: plain arithmetic',
      inputs: { places: ['1.2 mm', '1.1 mm', '0.7 mm'] },
      result: '1.0 mm',
      tolerance: 1e-12,
    },
  ],
};
