import type { Calculation } from './calculation.ts';

/** Volume of a cylinder with the piston at the bottom over its volume with the piston at the top. */
export const compressionRatio: Calculation = {
  name: 'compression-ratio',
  title: 'Compression ratio',
  inputs: {
    V_s: { what: 'swept volume of one cylinder', quantity: 'volume', unit: 'cm³', above: 0 },
    V_c: { what: 'clearance volume of one cylinder', quantity: 'volume', unit: 'cm³', above: 0 },
  },
  result: { quantity: 'ratio', unit: '1' },
  formula: '(V_s + V_c)/V_c',
  source:
    'definition of the compression ratio; worked at wiseco.com and qualitygermanautoparts.com',
  assumptions: [
    'swept volume of one cylinder',
    'clearance volume: chamber, gasket, deck and piston crown together, as measured with liquid',
    'geometric ratio: valve timing makes the working one smaller',
  ],
  examples: [
    {
      source: 'qualitygermanautoparts.com, 410.25 cm³ over 50 + 9.06 cm³, published as 7.95',
      inputs: { V_s: '410.25 cm³', V_c: '59.06 cm³' },
      result: '7.95 1',
      tolerance: 0.005,
    },
    {
      source: 'wiseco.com, 823.70 cm³ over 100 cm³, published as 9.237',
      inputs: { V_s: '823.70 cm³', V_c: '100 cm³' },
      result: '9.237 1',
      tolerance: 0.0005,
    },
    {
      source: 'the first engine by exact arithmetic',
      inputs: { V_s: '410.25 cm³', V_c: '59.06 cm³' },
      result: '7.94632577040298 1',
      tolerance: 1e-12,
    },
  ],
};
