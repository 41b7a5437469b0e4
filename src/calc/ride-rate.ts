import type { Calculation } from './calculation.ts';

/** Rate of the spring at the wheel and the tyre in series: what the body stands on. */
export const rideRate: Calculation = {
  name: 'ride-rate',
  title: 'Ride rate: spring and tyre in series',
  inputs: {
    k_w: { what: 'rate of the spring at the wheel', quantity: 'stiffness', unit: 'N/mm', above: 0 },
    k_t: { what: 'rate of the tyre', quantity: 'stiffness', unit: 'N/mm', above: 0 },
  },
  result: { quantity: 'stiffness', unit: 'N/mm' },
  formula: 'k_w*k_t/(k_w + k_t)',
  source:
    'T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE, 1992), chapter 5 (from memory); the same formula at calculatoratoz.com',
  assumptions: [
    'the rate of the spring is the one at the wheel, after the motion ratio',
    'both rates hold near the height the vehicle stands at; the tyre is at its pressure',
  ],
  examples: [
    {
      source: 'calculatoratoz.com, ride rate given wheel centre rate, printed 31756.4002198733 N/m',
      inputs: { k_w: '35.239 N/mm', k_t: '321.330 N/mm' },
      result: '31.7564002198733 N/mm',
      tolerance: 5e-14,
    },
    {
      source:
        'D. Barton and J. Fieldhouse, Automotive Chassis Engineering (Springer), page 209, quarter car: rates as published, 4224/214 by exact arithmetic',
      inputs: { k_w: '22 N/mm', k_t: '192 N/mm' },
      result: '19.738317757009346 N/mm',
      tolerance: 1e-12,
    },
  ],
};
