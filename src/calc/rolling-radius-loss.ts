import type { Calculation } from './calculation.ts';

/** How much smaller the measured loaded radius is than half of the diameter by the marking. */
export const rollingRadiusLoss: Calculation = {
  name: 'rolling-radius-loss',
  title: 'Loss of radius under load',
  inputs: {
    D: { what: 'diameter by the marking', quantity: 'length', unit: 'mm', above: 0 },
    r: { what: 'loaded radius', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'ratio', unit: '%' },
  formula: '1 - 2*r/D',
  requires: [
    {
      holds: 'r < D',
      otherwise: 'the loaded radius is as large as the diameter: was a diameter read?',
    },
  ],
  source:
    'deflection of a tyre, free radius minus loaded radius, as defined at tireguides.com; taken as a share of the free radius',
  assumptions: [
    'radius measured from the wheel centre straight down to level ground, at the pressure and load of use',
    'the free radius is half of the diameter by the marking, not measured',
    'the radius that counts for speed lies between the loaded and the free one',
  ],
  caution:
    'A large loss can mean a tyre that is overloaded or too soft, which overheats and fails.',
  examples: [
    {
      source:
        'greatlakes4x4.com, 31 in tyre with a radius of 14.94 in, inputs as published, result by exact arithmetic',
      inputs: { D: '31 in', r: '14.94 in' },
      result: '3.61290322580645 %',
      tolerance: 1e-10,
    },
    {
      source: 'common practice, no source: made-up inputs, result by exact arithmetic',
      inputs: { D: '631.9 mm', r: '300 mm' },
      result: '5.04826713087514 %',
      tolerance: 1e-10,
    },
  ],
};
