import type { Calculation } from './calculation.ts';

/** Angle between a lathe's spindle axis and the carriage's travel; the bar's own run-out cancels. */
export const spindleAlignmentAngle: Calculation = {
  name: 'spindle-alignment-angle',
  title: 'Angle of the spindle axis to the carriage, with a test bar',
  inputs: {
    N0: { what: 'reading near the nose, spindle at 0°', quantity: 'length', unit: 'mm' },
    N180: { what: 'reading near the nose, spindle at 180°', quantity: 'length', unit: 'mm' },
    F0: { what: 'reading at the far end, spindle at 0°', quantity: 'length', unit: 'mm' },
    F180: { what: 'reading at the far end, spindle at 180°', quantity: 'length', unit: 'mm' },
    L: { what: 'carriage travel between near and far', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'angle', unit: 'arcmin' },
  formula: 'atan(((F0 + F180)/2 - (N0 + N180)/2)/L)',
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
      source:
        'common practice, no source: made-up readings, the arctangent summed as a series with 40 digits',
      inputs: { N0: '0.000 mm', N180: '0.002 mm', F0: '0.010 mm', F180: '0.020 mm', L: '300 mm' },
      result: '0.1604281825201715 arcmin',
      tolerance: 1e-12,
    },
  ],
};
