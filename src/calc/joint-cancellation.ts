import type { Calculation } from './calculation.ts';

/** How far the working angles at the two ends of a shaft are from cancelling each other. */
export const jointCancellation: Calculation = {
  name: 'joint-cancellation',
  title: 'Difference of two joint angles',
  inputs: {
    beta_1: { what: 'working angle of the first joint', quantity: 'angle', unit: '°', least: 0 },
    beta_2: { what: 'working angle of the second joint', quantity: 'angle', unit: '°', least: 0 },
  },
  result: { quantity: 'angle', unit: '°' },
  formula: 'max(beta_1, beta_2) - min(beta_1, beta_2)',
  requires: [
    { holds: 'beta_1 < pi/2', otherwise: 'the angle of the first joint is a right angle or more' },
    { holds: 'beta_2 < pi/2', otherwise: 'the angle of the second joint is a right angle or more' },
  ],
  source:
    'basic rules of the driveline operating angle calculator, spicerparts.com: equal within 1°, or within 0.5° on motor homes and on shafts in front of a transfer case',
  assumptions: [
    'the yokes on the shaft are in phase, and all three shafts lie in one plane; if not, equal angles do not cancel',
    'published limits of each angle: 0.5° at least, 3° at most to run free of vibration',
    'published limits beyond 3°, shafts parallel: 5.0° at 3500 rpm, 4.2° at 4000, 3.7° at 4500, 3.2° at 5000',
    'measured at the height the machine runs at, with its load',
  ],
  caution:
    'A shaft that vibrates breaks joints and mounts, and a broken shaft can break through the floor.',
  examples: [
    {
      source: 'machinecalcs.com, shafts at 3°, 1° and −1°, working angles of 2° each',
      inputs: { beta_1: '2 °', beta_2: '2 °' },
      result: '0 °',
      tolerance: 1e-12,
    },
    {
      source: 'common practice, no source: made-up inputs, plain arithmetic',
      inputs: { beta_1: '2.4 °', beta_2: '3.3 °' },
      result: '0.9 °',
      tolerance: 1e-12,
    },
  ],
};
