import type { Calculation } from './calculation.ts';

/** Torque that tightens a bolt to a wanted preload, by the nut factor. */
export const boltTorque: Calculation = {
  name: 'bolt-torque',
  title: 'Tightening torque of a bolt',
  inputs: {
    // Friction decides, so that no value is assumed: about 0.20 dry, 0.15 oiled, 0.10 with an extreme-pressure grease.
    K: { what: 'nut factor', quantity: 'ratio', unit: '1', above: 0 },
    d: { what: 'nominal diameter of the thread', quantity: 'length', unit: 'mm', above: 0 },
    F: { what: 'preload', quantity: 'force', unit: 'kN', above: 0 },
  },
  result: { quantity: 'torque', unit: 'N·m' },
  formula: 'K*d*F',
  source: 'Mechanical Fastening, Joining, and Assembly, Fastening and Joining Mechanics, p. 85',
  assumptions: [
    'nut factor about 0.20 for plain dry steel, 0.15 oiled, 0.10 with an extreme-pressure lubricant, 0.30 or more for gritty threads',
    'the torque is read while the fastener turns',
    'no locking nut or insert that turns hard by itself',
  ],
  caution:
    'The same torque gives a pull about 30 % more or less as friction has it. An oiled bolt tightened to a dry torque can be stretched or break; a rusty one can stay loose. A maker’s own figure goes before this one.',
  examples: [
    {
      source:
        'Mechanical Fastening, Joining, and Assembly, p. 85: 0.190 in screw, 1275 lb, K = 0.3 (fliphtml5.com)',
      inputs: { K: '0.3 1', d: '0.190 in', F: '1275 lbf' },
      result: '72.7 lbf·in',
      tolerance: 0.05,
    },
    {
      source:
        'Mechanical Fastening, Joining, and Assembly, p. 85: 0.190 in screw, 1275 lb, K = 0.1 (fliphtml5.com)',
      inputs: { K: '0.1 1', d: '0.190 in', F: '1275 lbf' },
      result: '24.2 lbf·in',
      tolerance: 0.05,
    },
    {
      source: 'SAE J429 grade 5 table, ½-13, dry torque (coxhardware.com)',
      inputs: { K: '0.20 1', d: '0.5 in', F: '9046 lbf' },
      result: '75.4 lbf·ft',
      tolerance: 0.05,
    },
    {
      source: 'common practice, no source: ½ in and 5000 lbf by exact arithmetic',
      inputs: { K: '0.2 1', d: '0.5 in', F: '5000 lbf' },
      result: '56.49241451380835 N·m',
      tolerance: 1e-11,
    },
  ],
};
