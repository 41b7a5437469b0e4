import type { Calculation } from './calculation.ts';

/** Power of a turning shaft: torque times angular speed. */
export const enginePower: Calculation = {
  name: 'engine-power',
  title: 'Power from torque and speed',
  inputs: {
    T: { what: 'torque', quantity: 'torque', unit: 'N·m', above: 0 },
    n: { what: 'speed', quantity: 'rotational-speed', unit: 'rpm', least: 0 },
  },
  result: { quantity: 'power', unit: 'kW' },
  formula: 'T*n',
  source:
    'definition of power; worked at reference.org after A. Böge, Handbuch Maschinenbau (Springer, 2017), page 233',
  assumptions: [
    'torque and speed read at the same moment',
    'power at the place where the torque was measured: losses after it are not taken off',
    'no correction for air pressure or temperature',
  ],
  examples: [
    {
      source: 'reference.org, 234 N·m at 4200 rpm, published as 103 kW',
      inputs: { T: '234 N·m', n: '4200 rpm' },
      result: '103 kW',
      tolerance: 0.5,
    },
    {
      source: 'the same engine, computed to 30 digits',
      inputs: { T: '234 N·m', n: '4200 rpm' },
      result: '102.918575331601626 kW',
      tolerance: 1e-10,
    },
    {
      source:
        'common practice, no source: made-up inputs, by the definition of the horsepower as 33 000 ft·lbf in a minute',
      inputs: { T: '300 lbf·ft', n: '5000 rpm' },
      result: '285.599332144526658 hp',
      tolerance: 1e-9,
    },
  ],
};
