import type { Calculation } from './calculation.ts';

/** How far a lathe's spindle axis and the carriage part over a length; the bar's own run-out cancels. */
export const spindleAlignment: Calculation = {
  name: 'spindle-alignment',
  title: 'Spindle axis against the carriage, with a test bar',
  inputs: {
    N0: { what: 'reading near the nose, spindle at 0°', quantity: 'length', unit: 'mm' },
    N180: { what: 'reading near the nose, spindle at 180°', quantity: 'length', unit: 'mm' },
    F0: { what: 'reading at the far end, spindle at 0°', quantity: 'length', unit: 'mm' },
    F180: { what: 'reading at the far end, spindle at 180°', quantity: 'length', unit: 'mm' },
    L: { what: 'carriage travel between near and far', quantity: 'length', unit: 'mm', above: 0 },
    L_r: {
      what: 'length the error is stated for',
      quantity: 'length',
      unit: 'mm',
      otherwise: '300 mm',
      above: 0,
    },
  },
  result: { quantity: 'length', unit: 'mm' },
  // Half-turn means take out the bar's bend and its lean in the taper: both change sign with the spindle.
  formula: '((F0 + F180)/2 - (N0 + N180)/2)*L_r/L',
  source:
    'common practice; averaging as in Rollie’s Dad’s Method of Lathe Alignment (New England Model Engineering Society, 1997)',
  assumptions: [
    'the bar has the same diameter at both places; it may be bent or sit crooked',
    'spindle turned by hand; indicator on the carriage, not touched in between',
    'the bar does not sag under its own weight, which counts for vertical readings',
    'positive when the indicator reads more at the far end',
  ],
  examples: [
    {
      source: 'common practice, no source: made-up readings over 300 mm by exact arithmetic',
      inputs: { N0: '0.000 mm', N180: '0.002 mm', F0: '0.010 mm', F180: '0.020 mm', L: '300 mm' },
      result: '0.014 mm',
      tolerance: 1e-9,
    },
    {
      source: 'common practice, no source: the same readings over 200 mm, stated for 300 mm',
      inputs: { N0: '0.000 mm', N180: '0.002 mm', F0: '0.010 mm', F180: '0.020 mm', L: '200 mm' },
      result: '0.021 mm',
      tolerance: 1e-9,
    },
  ],
};
