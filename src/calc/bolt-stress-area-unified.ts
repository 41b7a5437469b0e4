import type { Calculation } from './calculation.ts';

/** Stress area of a bolt with a unified (inch) thread. */
export const boltStressAreaUnified: Calculation = {
  name: 'bolt-stress-area-unified',
  title: 'Stress area of a unified thread',
  inputs: {
    d: { what: 'nominal diameter of the thread', quantity: 'length', unit: 'in', above: 0 },
    // 13 threads per inch are a pitch of 1/13 in = 0.076923 in.
    P: {
      what: 'pitch (one inch divided by the threads per inch)',
      quantity: 'length',
      unit: 'in',
      above: 0,
    },
  },
  result: { quantity: 'area', unit: 'in²' },
  formula: 'pi/4*(d - 0.9743*P)^2',
  requires: [{ holds: 'P < d', otherwise: 'the pitch is as large as the diameter' }],
  source: 'ASME B1.1, tensile stress area 0.7854·(D − 0.9743/n)² (from memory)',
  assumptions: [
    'unified thread of 60° profile, UNC or UNF; the pitch is 1 in divided by the threads per inch',
    'sizes are the nominal ones, not measured on a worn thread',
    'the threaded part is the weakest: no waisted shank, no hole through it',
  ],
  caution:
    'A thread that is rusted, stretched or cut undersize is weaker than its nominal area says.',
  examples: [
    {
      source: 'bolt torque guide, ½-13 UNC (studylib.net 26058660)',
      inputs: { d: '0.5 in', P: '0.0769230769 in' },
      result: '0.1419 in²',
      tolerance: 0.00005,
    },
    {
      source: 'bolt torque guide, ¼-20 UNC (studylib.net 26058660)',
      inputs: { d: '0.25 in', P: '0.05 in' },
      result: '0.0318 in²',
      tolerance: 0.00005,
    },
    {
      source: 'common practice, no source: the ¼-20 result by 40-digit arithmetic',
      inputs: { d: '0.25 in', P: '0.05 in' },
      result: '0.03182091806096658 in²',
      tolerance: 1e-14,
    },
  ],
};
