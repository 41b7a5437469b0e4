import type { Calculation } from './calculation.ts';

/** Front share at which both axles use the same grip at a deceleration: the front share of the dynamic axle loads. */
export const idealBrakeBalance: Calculation = {
  name: 'ideal-brake-balance',
  title: 'Ideal front share of the braking force',
  inputs: {
    W_f: { what: 'front axle load, standing', quantity: 'mass', unit: 'kg', above: 0 },
    W_r: { what: 'rear axle load, standing', quantity: 'mass', unit: 'kg', above: 0 },
    z: { what: 'deceleration as a share of gravity', quantity: 'ratio', unit: '1', least: 0 },
    h: { what: 'height of the centre of gravity', quantity: 'length', unit: 'mm', above: 0 },
    L: { what: 'wheelbase', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'ratio', unit: '%' },
  formula: 'W_f/(W_f + W_r) + z*h/L',
  requires: [
    { holds: 'z <= 2', otherwise: 'the deceleration is no share of gravity: 0.8, not 8' },
    {
      holds: 'z*h/L*(W_f + W_r) < W_r',
      otherwise: 'the rear wheels would lift at this deceleration',
    },
  ],
  source:
    'T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 3 (from memory); same form worked in Brake Calculation (scribd.com 730192255)',
  assumptions: [
    'two axles, level road, straight ahead, steady deceleration',
    'deceleration as a share of standard gravity, as braking rates are given',
    'the tyres of both axles grip alike',
    'air drag, and the change of height as the springs give, are left out',
  ],
  caution:
    'More braking at the rear than this locks the rear wheels first, and the vehicle spins. The ideal changes with load and road: look at the worst of them.',
  examples: [
    {
      source:
        'Brake Calculation (scribd.com 730192255), published as 64.03 % with 2452.177 N written for 2452.5 N; axle loads from its distances',
      inputs: {
        W_f: '94.2810457516339869 kg',
        W_r: '155.718954248366013 kg',
        z: '0.68 1',
        h: '0.592 m',
        L: '1.53 m',
      },
      result: '64.03 %',
      tolerance: 0.01,
    },
    {
      source: 'the same buggy by exact arithmetic',
      inputs: {
        W_f: '94.2810457516339869 kg',
        W_r: '155.718954248366013 kg',
        z: '0.68 1',
        h: '0.592 m',
        L: '1.53 m',
      },
      result: '64.0235294117647 %',
      tolerance: 1e-10,
    },
    {
      source:
        'inputs of machinecalcs.com, 1500 kg with 55 % in front; front load of 825 kg and 260 kg moved',
      inputs: { W_f: '825 kg', W_r: '675 kg', z: '0.9 1', h: '520 mm', L: '2700 mm' },
      result: '72.3333333333333 %',
      tolerance: 1e-10,
    },
  ],
};
