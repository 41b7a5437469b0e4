import type { Calculation } from './calculation.ts';

/** Engine speed at a road speed, by the overall ratio and the rolling radius. */
export const engineSpeed: Calculation = {
  name: 'engine-speed',
  title: 'Engine speed at a road speed',
  inputs: {
    v: { what: 'road speed', quantity: 'speed', unit: 'km/h', least: 0 },
    G: { what: 'overall ratio', quantity: 'ratio', unit: '1', above: 0 },
    r: { what: 'rolling radius', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'rotational-speed', unit: 'rpm' },
  formula: 'v*G/r',
  source: 'kinematics of rolling, common practice; the same chain of formulas read at 0xff.com',
  assumptions: [
    'the driven wheels roll without slip',
    'rolling radius: distance travelled in one turn, divided by 2π',
    'no slip in a clutch or torque converter',
  ],
  examples: [
    {
      source:
        'calchorsepower.com, 70 mph, axle 3.55, tyre of 26 in, published as 3211 rpm with the constant 336 for 336.135',
      inputs: { v: '70 mph', G: '3.55 1', r: '13 in' },
      result: '3211 rpm',
      tolerance: 2,
    },
    {
      source: 'the same car with the exact constant',
      inputs: { v: '70 mph', G: '3.55 1', r: '13 in' },
      result: '3212.67719587713896 rpm',
      tolerance: 1e-9,
    },
    {
      source:
        'common practice, no source: made-up inputs, result through turns of the wheel in a minute',
      inputs: { v: '100 km/h', G: '3.315 1', r: '315.95 mm' },
      result: '2783.13359893249479 rpm',
      tolerance: 1e-9,
    },
  ],
};
