import type { Calculation } from './calculation.ts';

/** Pull in a bolt that was tightened to a torque, by the nut factor. */
export const boltTension: Calculation = {
  name: 'bolt-tension',
  title: 'Tension of a bolt, from its torque',
  inputs: {
    T: { what: 'tightening torque', quantity: 'torque', unit: 'N·m', above: 0 },
    // See the torque of a bolt: about 0.20 dry, 0.15 oiled.
    K: { what: 'nut factor', quantity: 'ratio', unit: '1', above: 0 },
    d: { what: 'nominal diameter of the thread', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'force', unit: 'kN' },
  formula: 'T/(K*d)',
  source:
    'Mechanical Fastening, Joining, and Assembly, Fastening and Joining Mechanics, p. 85: T = K·d·F solved for F',
  assumptions: [
    'nut factor about 0.20 for plain dry steel, 0.15 oiled, 0.10 with an extreme-pressure lubricant, 0.30 or more for gritty threads',
    'the torque was read while the fastener turned; one that does not move any more tells less',
    'the joint has not settled since',
  ],
  caution:
    'The pull found this way is good to about 30 % either way. Do not rely on it where a bolt that lets go can hurt someone.',
  examples: [
    {
      source: 'worked example, M10 class 8.8, dry (engitoolbox.org)',
      inputs: { T: '50 N·m', K: '0.20 1', d: '10 mm' },
      result: '25 kN',
      tolerance: 0.5,
    },
    {
      source:
        'worked example, M12, 82 N·m on an oiled bolt, printed "toward 45 kN" (aionlinecalculator.com), recomputed by exact arithmetic',
      inputs: { T: '82 N·m', K: '0.15 1', d: '12 mm' },
      result: '45.55555555555556 kN',
      tolerance: 1e-10,
    },
  ],
};
