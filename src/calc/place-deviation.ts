import type { Calculation } from './calculation.ts';
import { listedNames } from './listed-names.ts';
import { places } from './places.ts';

/** Standard deviation over several places, with n − 1: how uneven a panel is. */
export const placeDeviation: Calculation = {
  name: 'place-deviation',
  title: 'Standard deviation over several places',
  inputs: {},
  many: places,
  result: { quantity: 'length', unit: 'mm' },
  // Deviations are squared after the mean is taken off; the shortcut Σx² − (Σx)²/n loses every digit on thin spreads.
  formula: (n) => {
    const mean = `(${listedNames(n).join(' + ')})/${n}`;
    const squares = listedNames(n).map((name) => `(${name} - ${mean})^2`);
    return `sqrt((${squares.join(' + ')})/${n - 1})`;
  },
  source: 'experimental standard deviation, JCGM 100:2008 4.2.2',
  assumptions: [
    'the places stand for the whole panel',
    'it says how uneven the panel is, not how well its mean is known',
  ],
  examples: [
    {
      source: 'University of Calgary, error analysis, calculating the SD (canu.ucalgary.ca)',
      inputs: { places: ['1.18 m', '1.16 m', '1.18 m', '1.19 m', '1.21 m'] },
      result: '0.0181659 m',
      tolerance: 5e-8,
    },
    {
      source: 'NIST StRD, univariate summary statistics, NumAcc1, numbers taken as metres',
      inputs: { places: ['10000001 m', '10000003 m', '10000002 m'] },
      result: '1 m',
      tolerance: 1e-12,
    },
    {
      source: 'common practice, no source: √0.07 mm by exact arithmetic',
      inputs: { places: ['1.2 mm', '1.1 mm', '0.7 mm'] },
      result: '0.26457513110645906 mm',
      tolerance: 1e-12,
    },
  ],
};
