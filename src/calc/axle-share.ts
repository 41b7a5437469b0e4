import type { Calculation } from './calculation.ts';
import { listedNames } from './listed-names.ts';

/** Share of the vehicle's load that one axle carries. */
export const axleShare: Calculation = {
  name: 'axle-share',
  title: 'Share of the load on one axle',
  inputs: {
    W: { what: 'load of this axle', quantity: 'mass', unit: 'kg', above: 0 },
  },
  many: {
    key: 'others',
    what: 'load of another axle',
    quantity: 'mass',
    unit: 'kg',
    atLeast: 1,
    least: 0,
  },
  result: { quantity: 'ratio', unit: '%' },
  formula: (n) => `W/(W + ${listedNames(n).join(' + ')})`,
  source: 'static weight distribution, brakepower.com; common practice',
  assumptions: [
    'the axles stand at one level while each is weighed',
    'the vehicle is loaded as it will be used: fuel, driver, tools',
  ],
  caution: 'A good share can still be an overloaded axle. Compare each load with its rating too.',
  examples: [
    {
      source: 'school problem, loads as published (ask.learncbse.in), share by exact arithmetic',
      inputs: { W: '750 kg', others: ['1050 kg'] },
      result: '41.666666666666664 %',
      tolerance: 1e-12,
    },
    {
      source: 'common practice, no source: three axles, exact arithmetic',
      inputs: { W: '2400 kg', others: ['1900 kg', '1700 kg'] },
      result: '40 %',
      tolerance: 1e-12,
    },
  ],
};
