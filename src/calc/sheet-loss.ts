import type { Calculation } from './calculation.ts';

/** Share of a sheet's nominal thickness that is gone; negative where the sheet is thicker than its nominal. */
export const sheetLoss: Calculation = {
  name: 'sheet-loss',
  title: 'Thickness lost, of the nominal',
  inputs: {
    t_nom: { what: 'nominal thickness', quantity: 'length', unit: 'mm', above: 0 },
    t: { what: 'thickness measured', quantity: 'length', unit: 'mm', least: 0 },
  },
  result: { quantity: 'ratio', unit: '%' },
  formula: '(t_nom - t)/t_nom',
  source: 'common practice; metal loss against a reference wall thickness',
  assumptions: [
    'the nominal is that of the sheet as it was new: new sheet may already be some per cent off',
    'paint, filler and scale are off, or the instrument sees the metal alone',
    'a loss below zero means that the sheet is thicker than its nominal, and stays as it is',
  ],
  caution:
    'One place says nothing of the next. How much loss a structural part may have is for a qualified person to say.',
  examples: [
    {
      source: 'calculator.city, decrease in thickness: 2.50 mm lost of 12 mm, printed 20.83 %',
      inputs: { t_nom: '12.00 mm', t: '9.50 mm' },
      result: '20.83 %',
      tolerance: 0.005,
    },
    {
      source: 'common practice, no source: 16 ga worn to 19 ga, 9000/299 % by exact arithmetic',
      inputs: { t_nom: '0.0598 in', t: '0.0418 in' },
      result: '30.100334448160535 %',
      tolerance: 1e-12,
    },
    {
      source: 'common practice, no source: 42/152 by exact arithmetic',
      inputs: { t_nom: '1.52 mm', t: '1.10 mm' },
      result: '27.63157894736842 %',
      tolerance: 1e-12,
    },
    {
      source: 'common practice, no source: a sheet thicker than its nominal',
      inputs: { t_nom: '1.00 mm', t: '1.05 mm' },
      result: '-5 %',
      tolerance: 1e-12,
    },
  ],
};
