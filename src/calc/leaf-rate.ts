import type { Calculation } from './calculation.ts';

/** Rate of a semi-elliptic spring at its middle: a stack of graduated leaves with full-length leaves beside it. */
export const leafRate: Calculation = {
  name: 'leaf-rate',
  title: 'Rate of a leaf spring',
  inputs: {
    n_F: {
      what: 'full-length leaves besides the master leaf',
      quantity: 'count',
      unit: 'count',
      least: 0,
    },
    n_G: {
      what: 'graduated leaves, with the master leaf',
      quantity: 'count',
      unit: 'count',
      least: 1,
    },
    L: { what: 'effective half length', quantity: 'length', unit: 'mm', above: 0 },
    b: { what: 'width of the leaves', quantity: 'length', unit: 'mm', above: 0 },
    t: { what: 'thickness of one leaf', quantity: 'length', unit: 'mm', above: 0 },
    E: {
      what: 'modulus of elasticity',
      quantity: 'pressure',
      unit: 'MPa',
      otherwise: '207000 MPa',
      above: 0,
    },
  },
  result: { quantity: 'stiffness', unit: 'N/mm' },
  // A triangular cantilever gives 2·E·I/L³ for each graduated leaf, a plain one 3·E·I/L³ for each full-length leaf; two halves, I = b·t³/12.
  formula: 'E*b*t^3*(2*n_G + 3*n_F)/(6*L^3)',
  source:
    'R. S. Khurmi and J. K. Gupta, A Textbook of Machine Design, chapter 23 (from memory); rule for the effective length read in notes on leaf springs (scribd.com 973040044)',
  assumptions: [
    'all leaves have the same width and thickness and are not tapered',
    'the graduated leaves, the master leaf among them, are stepped evenly; full-length leaves are those besides the master leaf',
    'effective half length: half of the span between the eyes, less half of the band, or less a third of the distance between the U-bolts',
    'the spring is fairly flat, the leaves slide without friction and are not prestressed',
    'spring steel of 207 000 MPa unless another modulus is given',
  ],
  caution:
    'A rate says nothing about strength: a leaf of that rate may still be overstressed. A spring under load can be thrown out with great force.',
  examples: [
    {
      source:
        'R. S. Khurmi and J. K. Gupta, truck spring of 12 leaves (from memory), published as a deflection of 16.7 mm under 5.4 kN',
      inputs: {
        n_F: '2 count',
        n_G: '10 count',
        L: '482.5 mm',
        b: '40 mm',
        t: '10 mm',
        E: '210000 MPa',
      },
      result: '323.353 N/mm',
      tolerance: 0.98,
    },
    {
      source: 'the same truck spring, computed as triangular and plain cantilevers side by side',
      inputs: {
        n_F: '2 count',
        n_G: '10 count',
        L: '482.5 mm',
        b: '40 mm',
        t: '10 mm',
        E: '210000 MPa',
      },
      result: '324.048063605560507 N/mm',
      tolerance: 1e-9,
    },
    {
      source:
        'spring of uniform strength, k = 8·E·n·w·t³/(3·l³) as printed at piping-designer.com and fxsolver.com, l 1020 mm',
      inputs: {
        n_F: '0 count',
        n_G: '7 count',
        L: '510 mm',
        b: '65 mm',
        t: '9 mm',
        E: '207000 MPa',
      },
      result: '172.535110930185 N/mm',
      tolerance: 1e-9,
    },
  ],
};
