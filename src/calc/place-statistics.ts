import type { Calculation } from './calculation.ts';

/** Mean over several places of one panel. */
export const placeMean: Calculation = {
  name: 'place-mean',
  title: 'Mean over several places',
  inputs: {},
  many: { key: 'places', what: 'reading at a place', quantity: 'length', unit: 'mm', atLeast: 2 },
  result: { quantity: 'length', unit: 'mm' },
  formula: (n) => `(${names(n).join(' + ')})/${n}`,
  source: 'arithmetic mean, JCGM 100:2008 4.2.1',
  assumptions: ['the places stand for the whole panel'],
  examples: [
    {
      source: 'common practice, no source: plain arithmetic',
      inputs: { places: ['1.2 mm', '1.1 mm', '0.7 mm'] },
      result: '1.0 mm',
      tolerance: 1e-12,
    },
  ],
};

/** The least of several places: what a thinned panel is judged by. */
export const placeLeast: Calculation = {
  name: 'place-least',
  title: 'Least of several places',
  inputs: {},
  many: { key: 'places', what: 'reading at a place', quantity: 'length', unit: 'mm', atLeast: 2 },
  result: { quantity: 'length', unit: 'mm' },
  formula: (n) => `min(${names(n).join(', ')})`,
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

function names(n: number): string[] {
  return Array.from({ length: n }, (_, index) => `x${index + 1}`);
}
