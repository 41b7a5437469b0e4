import type { Calculation } from './calculation.ts';

/** Sag in the middle of an evenly loaded shelf that lies on supports at its ends. */
export const shelfDeflection: Calculation = {
  name: 'shelf-deflection',
  title: 'Sag of an evenly loaded shelf',
  inputs: {
    q: {
      what: 'mass on a length of shelf, its own included',
      quantity: 'mass-per-length',
      unit: 'kg/m',
      above: 0,
    },
    L: { what: 'span between supports', quantity: 'length', unit: 'mm', above: 0 },
    b: { what: 'depth of the shelf, front to back', quantity: 'length', unit: 'mm', above: 0 },
    h: { what: 'thickness of the shelf', quantity: 'length', unit: 'mm', above: 0 },
    E: {
      what: 'modulus of elasticity along the span',
      quantity: 'pressure',
      unit: 'MPa',
      above: 0,
    },
  },
  result: { quantity: 'length', unit: 'mm' },
  // 5·q·g·L⁴/(384·E·I), with I = b·h³/12
  formula: '5*q*g_n*L^4/(384*E*(b*h^3/12))',
  requires: [{ holds: 'h < L', otherwise: 'the shelf is thicker than its span' }],
  source:
    'beam table, simply supported, uniform load: δ = 5wL⁴/(384EI), I = bh³/12 (codingace.net, Timber deflection; also Wood Handbook, structural analysis equations)',
  assumptions: [
    'rectangular board of one thickness, free at its ends: neither fixed nor stiffened by a back or an edging',
    'sag from bending only and small against the span',
    'the sag of the first day: seasoned timber under a load that stays sags about 1.5 times as much in time (National Design Specification for Wood Construction 3.5.2, as quoted at awc.org)',
  ],
  caution:
    'This tells how a shelf looks, not what it holds before it breaks or its supports tear out.',
  examples: [
    {
      source:
        'Timber deflection, example 2: 2.5 kN/m (254.929 kg/m) on 63 × 225 mm over 3.6 m (calculatorsweb.site)',
      inputs: { q: '254.929 kg/m', L: '3600 mm', b: '63 mm', h: '225 mm', E: '11000 MPa' },
      result: '8.31 mm',
      tolerance: 0.005,
    },
    {
      source: 'Timber deflection: 2.5 kN/m (254.929 kg/m) on 50 × 200 mm over 4 m (codingace.net)',
      inputs: { q: '254.929 kg/m', L: '4000 mm', b: '50 mm', h: '200 mm', E: '11000 MPa' },
      result: '22.73 mm',
      tolerance: 0.005,
    },
    {
      source: 'common practice, no source: a made-up bookshelf by exact arithmetic',
      inputs: { q: '25 kg/m', L: '800 mm', b: '250 mm', h: '18 mm', E: '10000 MPa' },
      result: '1.076175582990398 mm',
      tolerance: 1e-12,
    },
  ],
};
