import type { Calculation } from './calculation.ts';

/** Damping as a share of the critical one, at which a body pushed down comes back without going over. */
export const dampingRatio: Calculation = {
  name: 'damping-ratio',
  title: 'Damping ratio',
  inputs: {
    c: { what: 'damping at the wheel', quantity: 'damping', unit: 'N·s/m', least: 0 },
    k: { what: 'spring rate at the wheel', quantity: 'stiffness', unit: 'N/mm', above: 0 },
    m: { what: 'mass carried', quantity: 'mass', unit: 'kg', above: 0 },
  },
  result: { quantity: 'ratio', unit: '1' },
  formula: 'c/(2*sqrt(k*m))',
  source:
    'S. S. Rao, Mechanical Vibrations, chapter 2, free vibration with viscous damping (from memory)',
  assumptions: [
    'the force of the damper grows evenly with speed, the same in bump and rebound; real ones do not',
    'a damper leaning or placed inboard is first brought to the wheel, by its motion ratio squared',
  ],
  caution:
    'A wheel with too little damping leaves the road. Have changed damper settings tried by a qualified person.',
  examples: [
    {
      source:
        'textbook example “Shock Absorber for a Motorcycle” (as reprinted at bartleby.com), printed 0.4037',
      inputs: { c: '554.4981 N·s/m', k: '2.3582652 N/mm', m: '200 kg' },
      result: '0.4037 1',
      tolerance: 0.00005,
    },
    {
      source: 'curioustab.com, question 47736: 52.92 N·s/m is critical for 0.7 N/mm and 1 kg',
      inputs: { c: '52.92 N·s/m', k: '0.7 N/mm', m: '1 kg' },
      result: '1 1',
      tolerance: 0.0001,
    },
    {
      source: 'common practice, no source: computed to 28 digits',
      inputs: { c: '1500 N·s/m', k: '20 N/mm', m: '320 kg' },
      result: '0.29646353064078556 1',
      tolerance: 1e-14,
    },
  ],
};
