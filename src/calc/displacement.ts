import type { Calculation } from './calculation.ts';

/** Swept volume of all cylinders. */
export const displacement: Calculation = {
  name: 'displacement',
  title: 'Displacement of an engine',
  inputs: {
    B: { what: 'bore', quantity: 'length', unit: 'mm', above: 0 },
    S: { what: 'stroke', quantity: 'length', unit: 'mm', above: 0 },
    n: { what: 'number of cylinders', quantity: 'count', unit: 'count', above: 0 },
  },
  result: { quantity: 'volume', unit: 'L' },
  formula: 'pi/4*B^2*S*n',
  source: 'geometry of the cylinder; formula read at rosspistons.com',
  assumptions: [
    'all cylinders have the same bore and stroke',
    'the crankshaft sits in line with the bore',
  ],
  examples: [
    {
      source: 'qualitygermanautoparts.com, 87 × 69 mm, four cylinders, published as 1641 cm³',
      inputs: { B: '87 mm', S: '69 mm', n: '4 count' },
      result: '1641 cm³',
      tolerance: 0.5,
    },
    {
      source: 'the same engine, computed to 30 digits',
      inputs: { B: '87 mm', S: '69 mm', n: '4 count' },
      result: '1640.73132085645901 cm³',
      tolerance: 1e-9,
    },
    {
      source: 'inputs of rosspistons.com, 4.000 × 3.480 in, eight cylinders, computed to 30 digits',
      inputs: { B: '4.000 in', S: '3.480 in', n: '8 count' },
      result: '5.73297759902541 L',
      tolerance: 1e-11,
    },
  ],
};
