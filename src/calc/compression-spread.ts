import type { Calculation } from './calculation.ts';
import { listedNames } from './listed-names.ts';

/** How far the lowest cylinder of a compression test is below the highest, as a share of the highest. */
export const compressionSpread: Calculation = {
  name: 'compression-spread',
  title: 'Spread of a compression test',
  inputs: {},
  many: {
    key: 'pressures',
    what: 'compression of a cylinder',
    quantity: 'pressure',
    unit: 'bar',
    least: 0,
    atLeast: 2,
  },
  result: { quantity: 'ratio', unit: '%' },
  formula: (n) => {
    const all = listedNames(n).join(', ');
    return `(max(${all}) - min(${all}))/max(${all})`;
  },
  source:
    'compression test in makers’ service information: lowest no less than 70 % of the highest (gm.saturn.team), or 75 % (lemon-manuals.org.ua)',
  assumptions: [
    'all cylinders tested the same way: warm, throttle open, all plugs out, same number of strokes',
    'the battery kept the cranking speed to the last cylinder',
    'the list holds every cylinder, all by the same gauge: an error of scale cancels, an offset does not',
  ],
  caution:
    'An engine that is cranked can start, spray fuel or spark. Shut off fuel and ignition, and keep clear of belts and fan.',
  examples: [
    {
      source:
        'gm.saturn.team, highest of 150 psi and lowest allowed of 105 psi, published as 70 % of it',
      inputs: { pressures: ['150 psi', '105 psi'] },
      result: '30 %',
      tolerance: 1e-10,
    },
    {
      source: 'common practice, no source: made-up inputs, exact arithmetic',
      inputs: { pressures: ['12.1 bar', '12.4 bar', '10.9 bar', '12.0 bar'] },
      result: '12.0967741935484 %',
      tolerance: 1e-10,
    },
  ],
};
