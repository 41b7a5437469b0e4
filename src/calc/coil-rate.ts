import type { Calculation } from './calculation.ts';

/** Rate of a helical spring of round wire, in compression or extension. */
export const coilRate: Calculation = {
  name: 'coil-rate',
  title: 'Rate of a coil spring',
  inputs: {
    d: { what: 'wire diameter', quantity: 'length', unit: 'mm', above: 0 },
    D: { what: 'mean diameter of the coil', quantity: 'length', unit: 'mm', above: 0 },
    N_a: { what: 'active coils', quantity: 'count', unit: 'count', above: 0 },
    G: {
      what: 'shear modulus',
      quantity: 'pressure',
      unit: 'MPa',
      otherwise: '79300 MPa',
      above: 0,
    },
  },
  result: { quantity: 'stiffness', unit: 'N/mm' },
  formula: 'G*d^4/(8*D^3*N_a)',
  requires: [{ holds: 'd < D', otherwise: 'the wire is as thick as the coil' }],
  source:
    'J. E. Shigley, Mechanical Engineering Design, chapter 10 (from memory); formula read at designerdata.nl',
  assumptions: [
    'round wire and a cylindrical coil of constant pitch',
    'only the active coils count: closed and ground ends take away about two',
    'no coil touches the next one in the range of use',
    'spring steel with a shear modulus of 79 300 MPa unless another is given',
  ],
  caution:
    'A rate says nothing about strength or about the load that closes the coils. A spring under load can be thrown out with great force.',
  examples: [
    {
      source:
        'J. E. Shigley, Mechanical Engineering Design, example 10-1 (from memory), published as 4.13 lbf/in',
      inputs: { d: '0.037 in', D: '0.400 in', N_a: '10.5 count', G: '11850000 psi' },
      result: '4.13 lbf/in',
      tolerance: 0.005,
    },
    {
      source: 'the same spring, computed by exact arithmetic',
      inputs: { d: '0.037 in', D: '0.400 in', N_a: '10.5 count', G: '11850000 psi' },
      result: '4.13110265066964 lbf/in',
      tolerance: 1e-11,
    },
    {
      source:
        'examination problem, inputs as published (mis.kyeop.go.ke), result by exact arithmetic',
      inputs: { d: '4 mm', D: '26 mm', N_a: '9 count', G: '79300 MPa' },
      result: '16.0420775805391 N/mm',
      tolerance: 1e-10,
    },
  ],
};
