import type { Calculation } from './calculation.ts';
import { cornerAssumptions, cornerSum, corners, someLoad } from './corners.ts';

/** How far from the centreline the centre of gravity lies, positive to the right; the two tracks may differ. */
export const cgAcross: Calculation = {
  name: 'cg-across',
  title: 'Centre of gravity off the centreline, positive to the right',
  inputs: {
    ...corners,
    t_f: { what: 'front track', quantity: 'length', unit: 'mm', above: 0 },
    t_r: { what: 'rear track', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'length', unit: 'mm' },
  formula: `((W_RF - W_LF)*t_f + (W_RR - W_LR)*t_r)/(2*${cornerSum})`,
  requires: [someLoad],
  source:
    'moments about the centreline, as in W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics (SAE, 1995), chapter 18 (from memory)',
  assumptions: [
    ...cornerAssumptions,
    'tracks are taken between the middles of the tyres and lie even about one centreline',
  ],
  caution:
    'A lift or sling set by a wrong centre of gravity drops the vehicle. Try it low, a hand above the stands.',
  examples: [
    {
      source:
        'examination problem, inputs as published (askfilo.com), result by exact arithmetic: 300/7 mm',
      inputs: {
        W_LF: '290 kg',
        W_RF: '330 kg',
        W_LR: '210 kg',
        W_RR: '220 kg',
        t_f: '1800 mm',
        t_r: '1800 mm',
      },
      result: '42.857142857142854 mm',
      tolerance: 1e-9,
    },
    {
      source:
        'common practice, no source: unequal tracks, by moments about the left rear wheel in exact arithmetic',
      inputs: {
        W_LF: '290 kg',
        W_RF: '330 kg',
        W_LR: '210 kg',
        W_RR: '220 kg',
        t_f: '1540 mm',
        t_r: '1500 mm',
      },
      result: '36.476190476190474 mm',
      tolerance: 1e-9,
    },
  ],
};
