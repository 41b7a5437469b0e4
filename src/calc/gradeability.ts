import type { Calculation } from './calculation.ts';

/** Steepest slope that the engine can hold in a gear at a steady crawl, as rise over run. */
export const gradeability: Calculation = {
  name: 'gradeability',
  title: 'Steepest slope by engine torque',
  inputs: {
    T: { what: 'engine torque', quantity: 'torque', unit: 'N·m', above: 0 },
    G: { what: 'overall ratio in that gear', quantity: 'ratio', unit: '1', above: 0 },
    eta: { what: 'efficiency of the driveline', quantity: 'ratio', unit: '%', above: 0 },
    r: { what: 'loaded radius of the driven wheels', quantity: 'length', unit: 'mm', above: 0 },
    m: { what: 'mass of the vehicle', quantity: 'mass', unit: 'kg', above: 0 },
    f: {
      what: 'rolling resistance as a share of the weight',
      quantity: 'ratio',
      unit: '%',
      least: 0,
    },
  },
  result: { quantity: 'ratio', unit: '%' },
  // The balance T·G·η/r = m·g·(sin θ + f·cos θ) solved for θ, with sin θ + f·cos θ = √(1 + f²)·sin(θ + atan f).
  formula: 'tan(asin(T*G*eta/(r*m*g_n*sqrt(1 + f^2))) - atan(f))',
  requires: [
    { holds: 'eta <= 1', otherwise: 'the efficiency is above 100 %' },
    {
      holds: 'T*G*eta/r > f*m*g_n',
      otherwise: 'the pull at the wheels does not overcome the rolling resistance',
    },
    {
      holds: 'T*G*eta/r < m*g_n',
      otherwise:
        'the pull at the wheels is as large as the weight: grip limits the slope, not the engine',
    },
  ],
  source:
    'J. Y. Wong, Theory of Ground Vehicles, chapter 3 (from memory); form for small slopes and its example read at webtec.co.uk',
  assumptions: [
    'steady crawl: no acceleration and no air drag',
    'all driven wheels grip; on most slopes grip gives out before torque does',
    'engine torque at the speed it turns in that gear, without slip of the clutch',
    'slope as rise over run, as on road signs: 100 % is 45°',
  ],
  caution:
    'The figure is about torque only. A vehicle can lose grip, slide back or tip over on a slope far below it, and its brakes must hold it there.',
  examples: [
    {
      source:
        'webtec.co.uk, motor of 117 N·m, 12 to 1, 4500 kg on good concrete (1.5 %, by its other example), published as 6.5 %',
      inputs: { T: '117 N·m', G: '12 1', eta: '100 %', r: '400 mm', m: '4500 kg', f: '1.5 %' },
      result: '6.5 %',
      tolerance: 0.05,
    },
    {
      source:
        'webtec.co.uk, motor of 1000 lbf·in, 12 to 1, 10 000 lb on good concrete, published as 6.5 %',
      inputs: { T: '1000 lbf·in', G: '12 1', eta: '100 %', r: '15 in', m: '10000 lb', f: '1.5 %' },
      result: '6.5 %',
      tolerance: 0.05,
    },
    {
      source:
        'common practice, no source: made-up inputs, slope found by trying angles until the forces balance',
      inputs: { T: '200 N·m', G: '18 1', eta: '85 %', r: '350 mm', m: '1800 kg', f: '1.5 %' },
      result: '55.0342932651737 %',
      tolerance: 1e-9,
    },
  ],
};
