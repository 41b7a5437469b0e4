import type { Calculation } from './calculation.ts';

/** True working angle of a universal joint whose shafts part in the top view and in the side view. */
export const jointAngle: Calculation = {
  name: 'joint-angle',
  title: 'Working angle of a universal joint',
  inputs: {
    T: { what: 'angle in the top view', quantity: 'angle', unit: '°' },
    S: { what: 'angle in the side view', quantity: 'angle', unit: '°' },
  },
  result: { quantity: 'angle', unit: '°' },
  formula: 'atan(sqrt(tan(T)^2 + tan(S)^2))',
  requires: [
    { holds: 'abs(T) < pi/2', otherwise: 'the angle in the top view is a right angle or more' },
    { holds: 'abs(S) < pi/2', otherwise: 'the angle in the side view is a right angle or more' },
  ],
  source:
    'Spicer Driveline Installation Service Manual, page 10, which takes √(T² + S²); here the exact form, by the direction vectors of the shafts',
  assumptions: [
    'both angles are between the same two shafts, projected on two planes at right angles',
    'one of the two shafts lies close to the line where those planes meet',
    'measured at the height the machine runs at, with its load',
  ],
  caution:
    'A joint beyond the angle its maker allows for its speed can fail, and a broken shaft can break through the floor.',
  examples: [
    {
      source: 'Spicer Driveline Installation Service Manual, page 10, published as 3.3°',
      inputs: { T: '2.15 °', S: '2.50 °' },
      result: '3.3 °',
      tolerance: 0.05,
    },
    {
      source: 'the same joint, computed from the product of the direction vectors',
      inputs: { T: '2.15 °', S: '2.50 °' },
      result: '3.2955704567124143 °',
      tolerance: 1e-11,
    },
    {
      source:
        'common practice, no source: made-up large angles, computed from the product of the direction vectors',
      inputs: { T: '30 °', S: '40 °' },
      result: '45.5262082377617939 °',
      tolerance: 1e-10,
    },
  ],
};
