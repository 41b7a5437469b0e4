import type { Calculation } from './calculation.ts';

/** Axle load that braking moves from the rear axle to the front, as the scales would show it. */
export const loadTransfer: Calculation = {
  name: 'load-transfer',
  title: 'Load moved to the front by braking',
  inputs: {
    m: { what: 'mass of the vehicle', quantity: 'mass', unit: 'kg', above: 0 },
    z: { what: 'deceleration as a share of gravity', quantity: 'ratio', unit: '1', least: 0 },
    h: { what: 'height of the centre of gravity', quantity: 'length', unit: 'mm', above: 0 },
    L: { what: 'wheelbase', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'mass', unit: 'kg' },
  formula: 'm*z*h/L',
  requires: [{ holds: 'z <= 2', otherwise: 'the deceleration is no share of gravity: 0.8, not 8' }],
  source:
    'T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 3 (from memory); same form read at machinecalcs.com',
  assumptions: [
    'two axles, level road, steady deceleration',
    'deceleration as a share of standard gravity, as braking rates are given',
    'air drag, and the change of height as the springs give, are left out',
    'the rear wheels stay on the ground',
  ],
  caution: 'Brakes set for too small a load transfer lock the rear wheels, and the vehicle spins.',
  examples: [
    {
      source: 'machinecalcs.com, 1500 kg, 520 mm, 2700 mm, 0.9 g, published as about 260 kg',
      inputs: { m: '1500 kg', z: '0.9 1', h: '520 mm', L: '2700 mm' },
      result: '260 kg',
      tolerance: 1e-9,
    },
    {
      source:
        'Brake Calculation (scribd.com 730192255), 250 kg buggy, inputs as published, result by exact arithmetic',
      inputs: { m: '250 kg', z: '0.68 1', h: '0.592 m', L: '1.53 m' },
      result: '65.7777777777778 kg',
      tolerance: 1e-10,
    },
  ],
};
