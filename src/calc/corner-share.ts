import type { Calculation } from './calculation.ts';
import { cornerAssumptions } from './corners.ts';
import { listedNames } from './listed-names.ts';

/** Share of the vehicle's load that one wheel carries. */
export const cornerShare: Calculation = {
  name: 'corner-share',
  title: 'Share of the load on one wheel',
  inputs: {
    W: { what: 'load of this wheel', quantity: 'mass', unit: 'kg', above: 0 },
  },
  many: {
    key: 'others',
    what: 'load of another wheel',
    quantity: 'mass',
    unit: 'kg',
    atLeast: 2,
    least: 0,
  },
  result: { quantity: 'ratio', unit: '%' },
  formula: (n) => `W/(W + ${listedNames(n).join(' + ')})`,
  source: 'common practice',
  assumptions: cornerAssumptions,
  examples: [
    {
      source:
        'racingsoftwaretechnology.com, cross weight: loads as published, share by exact arithmetic',
      inputs: { W: '900 lb', others: ['700 lb', '600 lb', '600 lb'] },
      result: '32.142857142857146 %',
      tolerance: 1e-12,
    },
    {
      source: 'examination problem, loads as published (askfilo.com), share by exact arithmetic',
      inputs: { W: '290 kg', others: ['330 kg', '210 kg', '220 kg'] },
      result: '27.61904761904762 %',
      tolerance: 1e-12,
    },
  ],
};
