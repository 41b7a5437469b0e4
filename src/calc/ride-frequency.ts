import type { Calculation } from './calculation.ts';

/** Undamped frequency at which the body bounces on one wheel's spring and tyre. */
export const rideFrequency: Calculation = {
  name: 'ride-frequency',
  title: 'Ride frequency of the body over one wheel',
  inputs: {
    k_r: { what: 'ride rate', quantity: 'stiffness', unit: 'N/mm', above: 0 },
    m_s: { what: 'sprung mass over the wheel', quantity: 'mass', unit: 'kg', above: 0 },
  },
  result: { quantity: 'frequency', unit: 'Hz' },
  formula: 'sqrt(k_r/m_s)/(2*pi)',
  source:
    'T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE, 1992), chapter 5 (from memory); simplified quarter car',
  assumptions: [
    'the sprung mass is the load of the wheel without wheel, hub, brake and half of the links',
    'damping and the wheel’s own mass are left out, which costs well under one per cent',
  ],
  examples: [
    {
      source:
        'D. Barton and J. Fieldhouse, Automotive Chassis Engineering (Springer), page 209, quarter car: 22 and 192 kN/m in series; the book’s two-mass model prints 1.25 Hz',
      inputs: { k_r: '19.738317757009346 N/mm', m_s: '317.5 kg' },
      result: '1.25 Hz',
      tolerance: 0.005,
    },
    {
      source: 'the same quarter car, computed to 28 digits',
      inputs: { k_r: '19.738317757009346 N/mm', m_s: '317.5 kg' },
      result: '1.2548832860522118 Hz',
      tolerance: 1e-12,
    },
    {
      source: 'machinecalcs.com, suspension wheel rate, printed about 1.43 Hz',
      inputs: { k_r: '28.125 N/mm', m_s: '350 kg' },
      result: '1.43 Hz',
      tolerance: 0.005,
    },
    {
      source: 'bit1024.com, natural frequency, printed 1.0066 Hz',
      inputs: { k_r: '0.2 N/mm', m_s: '5 kg' },
      result: '1.0066 Hz',
      tolerance: 0.00005,
    },
  ],
};
