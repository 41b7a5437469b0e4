import type { Calculation } from './calculation.ts';

/** Voltage lost on the way to a load, as a share of the supply. */
export const voltDropShare: Calculation = {
  name: 'volt-drop-share',
  title: 'Voltage drop as a share of the supply',
  inputs: {
    dU: { what: 'voltage drop', quantity: 'voltage', unit: 'V', least: 0 },
    U: { what: 'supply voltage', quantity: 'voltage', unit: 'V', above: 0 },
  },
  result: { quantity: 'ratio', unit: '%' },
  formula: 'dU/U',
  requires: [{ holds: 'dU <= U', otherwise: 'the drop is more than the supply' }],
  source:
    'common practice; the ratio as in Calculating Voltage Drop on 12 Volt (doityourselfsolarenergyprojects.blogspot.com)',
  assumptions: [
    'both voltages taken with the load on; without current there is no drop',
    'the drop is that of the whole way, out and back, unless the spec says which part',
  ],
  caution: 'A joint that drops voltage under a large current gets hot and can start a fire.',
  examples: [
    {
      source: 'starter circuit, 12.6 V falling to 11.34 V, printed 10 % (university.govur.com)',
      inputs: { dU: '1.26 V', U: '12.6 V' },
      result: '10 %',
      tolerance: 0.5,
    },
    {
      source: 'common practice, no source: made-up readings by exact arithmetic',
      inputs: { dU: '450 mV', U: '13.8 V' },
      result: '3.260869565217391 %',
      tolerance: 1e-12,
    },
  ],
};
