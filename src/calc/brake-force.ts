import type { Calculation } from './calculation.ts';

/** Braking force at the ground of one wheel with a disc brake. */
export const brakeForce: Calculation = {
  name: 'brake-force',
  title: 'Braking force of one wheel',
  inputs: {
    p: { what: 'line pressure', quantity: 'pressure', unit: 'bar', above: 0 },
    A: { what: 'piston area on one side of the disc', quantity: 'area', unit: 'cm²', above: 0 },
    mu: { what: 'friction of the pads', quantity: 'ratio', unit: '1', above: 0 },
    r_e: { what: 'effective radius of the disc', quantity: 'length', unit: 'mm', above: 0 },
    R: { what: 'loaded radius of the tyre', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'force', unit: 'N' },
  formula: '2*mu*p*A*r_e/R',
  requires: [
    { holds: 'mu <= 1', otherwise: 'the friction of the pads is above 1' },
    { holds: 'r_e < R', otherwise: 'the effective radius of the disc is as large as the tyre' },
  ],
  source:
    'torque of a disc brake with two pads, T = 2·μ·F·r, read at engineeringtoolbox.com; R. Limpert, Brake Design and Safety (from memory)',
  assumptions: [
    'piston area on one side of the disc: of the one piston of a floating caliper, of the pistons on one side of a fixed one',
    'the same friction at both pads, hot as cold',
    'effective radius: from the hub centre to the middle of the pad',
    'the wheel does not lock: above the grip of the tyre the force is not reached',
  ],
  caution:
    'Pad friction falls with heat and wet. A calculated force is no proof that a vehicle stops.',
  examples: [
    {
      source:
        'Brake Team Calculations (scribd.com 458887167) run backwards: two pistons of 3.14 cm², one on each side; published as 493.1301603 N',
      inputs: { p: '3.021980813 MPa', A: '3.14 cm²', mu: '0.4 1', r_e: '82.5 mm', R: '127 mm' },
      result: '493.1301603 N',
      tolerance: 5e-7,
    },
    {
      source: 'common practice, no source: made-up inputs, result by exact arithmetic',
      inputs: { p: '60 bar', A: '22.9 cm²', mu: '0.38 1', r_e: '108 mm', R: '298 mm' },
      result: '3784.49395973154 N',
      tolerance: 1e-9,
    },
  ],
};
