import type { Calculation } from './calculation.ts';

/** How far a spring goes down under the mass it carries, with its rate at the wheel or at the spring as the mass is. */
export const staticDeflection: Calculation = {
  name: 'static-deflection',
  title: 'Static deflection of a spring under its load',
  inputs: {
    m: { what: 'mass carried', quantity: 'mass', unit: 'kg', above: 0 },
    k: { what: 'rate of the spring', quantity: 'stiffness', unit: 'N/mm', above: 0 },
  },
  result: { quantity: 'length', unit: 'mm' },
  formula: 'm*g_n/k',
  source: 'equilibrium of weight and spring force, with standard gravity 9.80665 m/s²',
  assumptions: [
    'one rate holds from no load to full load',
    'mass and rate belong to the same place: both at the wheel, or both at the spring',
  ],
  examples: [
    {
      source: 'autospeed.com, springs and natural frequencies: 250 kg on 1 kgf/mm, printed 250 mm',
      inputs: { m: '250 kg', k: '9.80665 N/mm' },
      result: '250 mm',
      tolerance: 0.5,
    },
    {
      source: 'common practice, no source: by exact arithmetic',
      inputs: { m: '317.5 kg', k: '19.738317757009346 N/mm' },
      result: '157.74451568418561 mm',
      tolerance: 1e-10,
    },
    {
      source: 'common practice, no source: δ = g/(2π·1 Hz)², the “10 in for 1 Hz” of the handbooks',
      inputs: { m: '1 kg', k: '0.039478417604357434 N/mm' },
      result: '9.779738046910745 in',
      tolerance: 1e-10,
    },
  ],
};
