import type { Calculation } from './calculation.ts';
import { listedNames } from './listed-names.ts';

/** Total indicator reading: the largest less the least of the readings in one turn. */
export const runout: Calculation = {
  name: 'runout',
  title: 'Run-out (total indicator reading)',
  inputs: {},
  many: {
    key: 'readings',
    what: 'indicator reading in one turn',
    quantity: 'length',
    unit: 'mm',
    atLeast: 2,
  },
  result: { quantity: 'length', unit: 'mm' },
  formula: (n) => `max(${listedNames(n).join(', ')}) - min(${listedNames(n).join(', ')})`,
  source: 'Total indicator reading (higherprecision.com, learning center)',
  assumptions: [
    'the largest and the least of a full turn are among the readings',
    'the indicator stands square to the surface and was not touched in between',
  ],
  examples: [
    {
      source: 'worked example, −0.01 to +0.03 mm (machinecalc.pages.dev)',
      inputs: { readings: ['-0.01 mm', '0.03 mm'] },
      result: '0.04 mm',
      tolerance: 0.005,
    },
    {
      source: 'examination question, flywheel housing (api17195.sec3.dev)',
      inputs: { readings: ['0.003 in', '-0.006 in'] },
      result: '0.009 in',
      tolerance: 0.0005,
    },
    {
      source: 'common practice, no source: four made-up readings, plain arithmetic',
      inputs: { readings: ['0.000 mm', '0.006 mm', '0.011 mm', '0.004 mm'] },
      result: '0.011 mm',
      tolerance: 1e-12,
    },
  ],
};
