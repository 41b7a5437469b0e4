import type { Calculation } from './calculation.ts';

/** Pull a bolt is tightened to, as a share of its proof load. */
export const boltPreload: Calculation = {
  name: 'bolt-preload',
  title: 'Preload of a bolt, as a share of its proof load',
  inputs: {
    F_p: { what: 'proof load of the bolt', quantity: 'force', unit: 'kN', above: 0 },
    s: {
      what: 'share of the proof load',
      quantity: 'ratio',
      unit: '%',
      otherwise: '75 %',
      above: 0,
    },
  },
  result: { quantity: 'force', unit: 'kN' },
  formula: 's*F_p',
  requires: [{ holds: 's <= 1', otherwise: 'the share is more than the whole proof load' }],
  source:
    "Shigley's Mechanical Engineering Design, 9th edition, p. 442 (as quoted at forum.ansys.com)",
  assumptions: [
    '75 % for a joint that is taken apart again; 90 % for one that stays',
    'the parts clamped and the thread in the part hold at least as much as the bolt',
  ],
  caution:
    'A maker’s own figure for a joint goes before this one. Wheels, brakes, steering and engine bearings have such figures.',
  examples: [
    {
      source: 'SAE J429 grade 5 table, ½-13, clamping force at 75 % of proof (coxhardware.com)',
      inputs: { F_p: '12061.5 lbf' },
      result: '9046 lbf',
      tolerance: 0.5,
    },
    {
      source: 'worked example, M12 class 8.8 at 70 % (aionlinecalculator.com)',
      inputs: { F_p: '48.894 kN', s: '70 %' },
      result: '34 kN',
      tolerance: 0.5,
    },
    {
      source: 'common practice, no source: the ½-13 result by exact arithmetic',
      inputs: { F_p: '12061.5 lbf', s: '75 %' },
      result: '9046.125 lbf',
      tolerance: 1e-9,
    },
  ],
};
