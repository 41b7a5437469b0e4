import type { Calculation } from './calculation.ts';

/** How far behind the front axle the centre of gravity lies, from the two axle loads. */
export const cgAlong: Calculation = {
  name: 'cg-along',
  title: 'Centre of gravity behind the front axle',
  inputs: {
    L: { what: 'wheelbase', quantity: 'length', unit: 'mm', above: 0 },
    Wf: { what: 'front axle load', quantity: 'mass', unit: 'kg', above: 0 },
    Wr: { what: 'rear axle load', quantity: 'mass', unit: 'kg', above: 0 },
  },
  result: { quantity: 'length', unit: 'mm' },
  formula: 'L*Wr/(Wf + Wr)',
  source: 'moments about the front axle, as in static weight distribution, brakepower.com',
  assumptions: [
    'two axles, level while they are weighed',
    'the wheelbase is the same on both sides, or the mean of the two',
    'the vehicle is loaded as it will be used: fuel, driver, tools',
  ],
  caution:
    'A lift or sling set by a wrong centre of gravity drops the vehicle. Try it low, a hand above the stands.',
  examples: [
    {
      source: 'school problem (ask.learncbse.in), printed 1.05 m',
      inputs: { L: '1.8 m', Wf: '750 kg', Wr: '1050 kg' },
      result: '1.05 m',
      tolerance: 1e-12,
    },
    {
      source: 'truckscience.com, axle weights worked backwards, printed 179.8 in',
      inputs: { L: '208 in', Wf: '678 lb', Wr: '4322 lb' },
      result: '179.8 in',
      tolerance: 0.05,
    },
    {
      source:
        'examination problem (askfilo.com), printed 0.2307 m in front of the middle of 2550 mm',
      inputs: { L: '2550 mm', Wf: '620 kg', Wr: '430 kg' },
      result: '1044.3 mm',
      tolerance: 0.05,
    },
    {
      source: 'the same examination problem, by exact arithmetic',
      inputs: { L: '2550 mm', Wf: '620 kg', Wr: '430 kg' },
      result: '1044.2857142857142 mm',
      tolerance: 1e-9,
    },
  ],
};
