import type { Calculation } from './calculation.ts';

/** Dry film that a wet film leaves, with or without thinner. */
export const dryFilm: Calculation = {
  name: 'dry-film',
  title: 'Dry film from a wet film',
  inputs: {
    WFT: { what: 'wet film thickness', quantity: 'length', unit: 'µm', above: 0 },
    VS: { what: 'volume solids of the paint', quantity: 'ratio', unit: '%', above: 0 },
    th: {
      what: 'thinner added to a volume of paint',
      quantity: 'ratio',
      unit: '%',
      otherwise: '0 %',
      least: 0,
    },
  },
  result: { quantity: 'length', unit: 'µm' },
  formula: 'WFT*VS/(1 + th)',
  requires: [{ holds: 'VS <= 1', otherwise: 'the volume solids are above 100 %' }],
  source:
    'Paint School, section 16, Calculations and conversions: dry film thickness (scribd.com 738286565)',
  assumptions: [
    'volume solids of the paint before thinning; all of the thinner leaves the film',
    'the wet film was read at once, before solvent had left it',
  ],
  caution:
    'A dry film worked out from a wet one is an estimate; where corrosion protection depends on it, measure the dry film.',
  examples: [
    {
      source: 'Paint School calculations: 250 µm wet, 50 % (scribd.com 250225450)',
      inputs: { WFT: '250 µm', VS: '50 %' },
      result: '125 µm',
      tolerance: 0.5,
    },
    {
      source: 'common practice, no source: 8 mil wet, 35 %, 10 % thinner by exact arithmetic',
      inputs: { WFT: '8 thou', VS: '35 %', th: '10 %' },
      result: '2.545454545454545 thou',
      tolerance: 1e-12,
    },
  ],
};
