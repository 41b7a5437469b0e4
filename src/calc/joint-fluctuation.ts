import type { Calculation } from './calculation.ts';

/** How much the driven shaft of one universal joint speeds up and slows down in a turn: highest minus lowest speed, as a share of the mean. */
export const jointFluctuation: Calculation = {
  name: 'joint-fluctuation',
  title: 'Speed fluctuation of a universal joint',
  inputs: {
    beta: { what: 'working angle of the joint', quantity: 'angle', unit: '°', least: 0 },
  },
  result: { quantity: 'ratio', unit: '%' },
  formula: '1/cos(beta) - cos(beta)',
  requires: [{ holds: 'beta < pi/2', otherwise: 'the working angle is a right angle or more' }],
  source:
    'kinematics of the Hooke joint, VDI 2722 (from memory); the limit of 0.0027, which is 3°, read at elbe-group.de',
  assumptions: [
    'one plain cross joint; a constant-velocity joint has none',
    'the driving shaft turns evenly',
  ],
  caution:
    'Uneven running shakes the driveline apart in time; a joint beyond the angle its maker allows can fail.',
  examples: [
    {
      source: 'elbe-group.de, technical page, non-uniformity printed for 3°',
      inputs: { beta: '3 °' },
      result: '0.0027 1',
      tolerance: 5e-5,
    },
    {
      source: 'the same angle, computed to 30 digits',
      inputs: { beta: '3 °' },
      result: '0.274281124334710276 %',
      tolerance: 1e-12,
    },
    {
      source: '10°, from the highest and lowest of 3600 speeds in half a turn',
      inputs: { beta: '10 °' },
      result: '3.06188588735369259 %',
      tolerance: 1e-11,
    },
  ],
};
