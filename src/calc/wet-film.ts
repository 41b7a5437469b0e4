import type { Calculation } from './calculation.ts';

/** Wet film to lay on for a wanted dry film, with or without thinner. */
export const wetFilm: Calculation = {
  name: 'wet-film',
  title: 'Wet film for a dry film',
  inputs: {
    DFT: { what: 'dry film thickness', quantity: 'length', unit: 'µm', above: 0 },
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
  formula: 'DFT*(1 + th)/VS',
  requires: [{ holds: 'VS <= 1', otherwise: 'the volume solids are above 100 %' }],
  source:
    'Paint School, section 16, Calculations and conversions: WFT after thinning (scribd.com 738286565)',
  assumptions: [
    'volume solids of the paint before thinning; all of the thinner leaves the film',
    'the wet film is read at once, before solvent has left it',
  ],
  examples: [
    {
      source: 'Paint School calculations: 100 µm, 65 %, no thinner (scribd.com 250225450)',
      inputs: { DFT: '100 µm', VS: '65 %' },
      result: '154 µm',
      tolerance: 0.5,
    },
    {
      source: 'Paint School calculations: 100 µm, 65 %, 20 % thinner (scribd.com 250225450)',
      inputs: { DFT: '100 µm', VS: '65 %', th: '20 %' },
      result: '185 µm',
      tolerance: 0.5,
    },
    {
      source: 'common practice, no source: the thinned film by exact arithmetic',
      inputs: { DFT: '100 µm', VS: '65 %', th: '20 %' },
      result: '184.6153846153846 µm',
      tolerance: 1e-10,
    },
  ],
};
