import type { Calculation } from './calculation.ts';
import { cornerAssumptions, cornerSum, corners, someLoad } from './corners.ts';

/** Share of the load on the diagonal of right front and left rear: 50 % stands evenly on its springs. */
export const crossWeight: Calculation = {
  name: 'cross-weight',
  title: 'Cross weight: share on right front and left rear',
  inputs: corners,
  result: { quantity: 'ratio', unit: '%' },
  formula: `(W_RF + W_LR)/${cornerSum}`,
  requires: [someLoad],
  source: 'racingsoftwaretechnology.com, cross weight; common practice',
  assumptions: [
    ...cornerAssumptions,
    'anti-roll bars are unhooked or free of load, so that the springs alone are compared',
  ],
  examples: [
    {
      source: 'racingsoftwaretechnology.com, cross weight, printed 53.57 %',
      inputs: { W_LF: '700 lb', W_RF: '600 lb', W_LR: '900 lb', W_RR: '600 lb' },
      result: '53.57 %',
      tolerance: 0.005,
    },
    {
      source:
        'groundcontrolstore.com, cornerweights: loads and diagonal 1276 lb as published, 1276/2555 by exact arithmetic',
      inputs: { W_LF: '694 lb', W_RF: '606 lb', W_LR: '670 lb', W_RR: '585 lb' },
      result: '49.941291585127202 %',
      tolerance: 1e-12,
    },
  ],
};
