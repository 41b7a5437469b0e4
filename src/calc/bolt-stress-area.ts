import type { Calculation } from './calculation.ts';

/** Stress area of a metric bolt: the circle between pitch and core diameter that a threaded rod is as strong as. */
export const boltStressArea: Calculation = {
  name: 'bolt-stress-area',
  title: 'Stress area of a metric thread',
  inputs: {
    d: { what: 'nominal diameter of the thread', quantity: 'length', unit: 'mm', above: 0 },
    P: { what: 'pitch of the thread', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'area', unit: 'mm²' },
  formula: 'pi/4*(d - 0.9382*P)^2',
  requires: [{ holds: 'P < d', otherwise: 'the pitch is as large as the diameter' }],
  source:
    'ISO 898-1:2013, nominal stress area (as quoted in trade tables; the standard itself not read)',
  assumptions: [
    'ISO metric thread of 60° profile',
    'sizes are the nominal ones, not measured on a worn thread',
    'the threaded part is the weakest: no waisted shank, no hole through it',
  ],
  caution:
    'A thread that is rusted, stretched or cut undersize is weaker than its nominal area says.',
  examples: [
    {
      source: 'ISO 898-1 table of proof loads, M10 (optimas.com)',
      inputs: { d: '10 mm', P: '1.5 mm' },
      result: '58.0 mm²',
      tolerance: 0.05,
    },
    {
      source: 'ISO 898-1 table of proof loads, M12 (optimas.com)',
      inputs: { d: '12 mm', P: '1.75 mm' },
      result: '84.3 mm²',
      tolerance: 0.05,
    },
    {
      source: 'common practice, no source: the M10 result by 40-digit arithmetic',
      inputs: { d: '10 mm', P: '1.5 mm' },
      result: '57.98947542534722 mm²',
      tolerance: 1e-11,
    },
  ],
};
