import type { Calculation } from './calculation.ts';
import { cornerAssumptions, cornerSum, corners, someLoad } from './corners.ts';

/** Share of the load on the two left wheels. */
export const sideShare: Calculation = {
  name: 'side-share',
  title: 'Share of the load on the left side',
  inputs: corners,
  result: { quantity: 'ratio', unit: '%' },
  formula: `(W_LF + W_LR)/${cornerSum}`,
  requires: [someLoad],
  source: 'grassrootsmotorsports.com, understanding corner weights; common practice',
  assumptions: cornerAssumptions,
  examples: [
    {
      source:
        'groundcontrolstore.com, cornerweights: sides 1364 and 1191 lb as published, share by exact arithmetic',
      inputs: { W_LF: '694 lb', W_RF: '606 lb', W_LR: '670 lb', W_RR: '585 lb' },
      result: '53.38551859099804 %',
      tolerance: 1e-12,
    },
  ],
};
