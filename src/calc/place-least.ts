import type { Calculation } from './calculation.ts';
import { listedNames } from './listed-names.ts';
import { places } from './places.ts';

/** The least of several places: what a thinned panel is judged by. */
export const placeLeast: Calculation = {
  name: 'place-least',
  title: 'Least of several places',
  inputs: {},
  many: places,
  result: { quantity: 'length', unit: 'mm' },
  formula: (n) => `min(${listedNames(n).join(', ')})`,
  source: 'common practice',
  assumptions: ['the thinnest place was among those measured'],
  caution:
    'Structure fails at a place nobody measured. Have structural sheet judged by a qualified person.',
  examples: [
    {
      source: 'common practice, no source: plain arithmetic',
      inputs: { places: ['1.2 mm', '1.1 mm', '0.7 mm'] },
      result: '0.7 mm',
      tolerance: 1e-12,
    },
  ],
};
