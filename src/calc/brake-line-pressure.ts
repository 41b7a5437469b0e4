import type { Calculation } from './calculation.ts';

/** Pressure in the brake line from the force on the pedal, its lever and the bore of the master cylinder. */
export const brakeLinePressure: Calculation = {
  name: 'brake-line-pressure',
  title: 'Brake line pressure',
  inputs: {
    F: { what: 'force on the pedal', quantity: 'force', unit: 'N', above: 0 },
    i: { what: 'pedal ratio', quantity: 'ratio', unit: '1', above: 0 },
    D: { what: 'bore of the master cylinder', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'pressure', unit: 'bar' },
  formula: '4*F*i/(pi*D^2)',
  source:
    'force over piston area; R. Limpert, Brake Design and Safety (from memory); formula read at carrating.org',
  assumptions: [
    'no servo: with one, take the force of the pushrod and a pedal ratio of 1',
    'no loss in the pedal, the seals or the return springs',
    'a tandem cylinder has this pressure in each circuit',
  ],
  caution:
    'Air, heat, a swollen hose or a worn seal lower the pressure that reaches the wheels. Brakes that were worked on need a test before the road.',
  examples: [
    {
      source: 'gt40s.com thread 53361, 75 lbf, 5 to 1, bore of 0.700 in, published as 974 psi',
      inputs: { F: '75 lbf', i: '5 1', D: '0.700 in' },
      result: '974 psi',
      tolerance: 0.5,
    },
    {
      source:
        'gt40s.com thread 53361, bore of 0.625 in, published as 1221 psi with the area rounded to 0.307 in²',
      inputs: { F: '75 lbf', i: '5 1', D: '0.625 in' },
      result: '1221 psi',
      tolerance: 2,
    },
    {
      source: 'common practice, no source: made-up inputs, 600 lbf over the area of a bore of 1 in',
      inputs: { F: '100 lbf', i: '6 1', D: '1.000 in' },
      result: '763.943726841097612 psi',
      tolerance: 1e-9,
    },
  ],
};
