import type { Calculation } from './calculation.ts';

/** Road speed at an engine speed, by the overall ratio and the rolling radius. */
export const roadSpeed: Calculation = {
  name: 'road-speed',
  title: 'Road speed at an engine speed',
  inputs: {
    n: { what: 'engine speed', quantity: 'rotational-speed', unit: 'rpm', least: 0 },
    G: { what: 'overall ratio', quantity: 'ratio', unit: '1', above: 0 },
    r: { what: 'rolling radius', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'speed', unit: 'km/h' },
  formula: 'n*r/G',
  source: 'kinematics of rolling, common practice; the same sum worked at fordterritory.info',
  assumptions: [
    'the driven wheels roll without slip',
    'rolling radius: distance travelled in one turn, divided by 2π',
    'no slip in a clutch or torque converter',
  ],
  caution:
    'A speed that the gears allow is no speed that tyres, brakes, propeller shaft or law allow.',
  examples: [
    {
      source:
        'fordterritory.info, 2200 rpm, gear 0.76, axle 4.10, tyre 275/40 R20, published as 96.9 km/h',
      inputs: { n: '2200 rpm', G: '3.116 1', r: '364 mm' },
      result: '96.9 km/h',
      tolerance: 0.05,
    },
    {
      source: 'the same car, computed through turns of the wheel in a minute',
      inputs: { n: '2200 rpm', G: '3.116 1', r: '364 mm' },
      result: '96.8852656095522372 km/h',
      tolerance: 1e-10,
    },
  ],
};
