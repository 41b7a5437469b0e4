import type { Calculation } from './calculation.ts';

/** Height of the centre of gravity from the front load with the rear axle raised; the wheels of the two axles may differ in radius. */
export const cgHeightRaisedAxle: Calculation = {
  name: 'cg-height-raised-axle',
  title: 'Height of the centre of gravity, by raising the rear axle',
  inputs: {
    L: { what: 'wheelbase', quantity: 'length', unit: 'mm', above: 0 },
    Wf: { what: 'front axle load, level', quantity: 'mass', unit: 'kg', above: 0 },
    Wr: { what: 'rear axle load, level', quantity: 'mass', unit: 'kg', above: 0 },
    Wq: { what: 'front axle load, rear raised', quantity: 'mass', unit: 'kg', above: 0 },
    H: { what: 'rise of the rear wheel centres', quantity: 'length', unit: 'mm', above: 0 },
    Rf: { what: 'loaded radius of the front wheels', quantity: 'length', unit: 'mm', above: 0 },
    Rr: { what: 'loaded radius of the rear wheels', quantity: 'length', unit: 'mm', above: 0 },
  },
  result: { quantity: 'length', unit: 'mm' },
  // Rf·b/L + Rr·a/L + L·(Wq − Wf)/(W·tan θ), with a = L·Wr/W, b = L·Wf/W and sin θ = H/L
  formula: '(Rf*Wf + Rr*Wr)/(Wf + Wr) + L*(Wq - Wf)/((Wf + Wr)*tan(asin(H/L)))',
  requires: [
    { holds: 'H < L', otherwise: 'the rise is as large as the wheelbase' },
    { holds: 'Wq > Wf', otherwise: 'the front axle does not get heavier when the rear is raised' },
  ],
  source:
    'W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics (SAE, 1995), chapter 18; method as in ISO 10392:2011',
  assumptions: [
    'suspension locked while the axle is raised',
    'loads do not shift: fuel level and cargo stay where they are',
    'the two axle loads level and raised are taken with the same scales',
  ],
  caution:
    'A raised vehicle can roll or slip off its stands. A wrong height hides a vehicle that tips easily.',
  examples: [
    {
      source:
        'examination problem, inputs as published (askfilo.com), result recomputed by exact arithmetic; front and rear exchanged',
      inputs: {
        L: '2550 mm',
        Wf: '430 kg',
        Wr: '620 kg',
        Wq: '680 kg',
        H: '1500 mm',
        Rf: '353 mm',
        Rr: '353 mm',
      },
      result: '1187.683430 mm',
      tolerance: 1e-6,
    },
    {
      source:
        'common practice, no source: made-up inputs, result by exact arithmetic and checked forwards',
      inputs: {
        L: '2400 mm',
        Wf: '640 kg',
        Wr: '560 kg',
        Wq: '700 kg',
        H: '600 mm',
        Rf: '300 mm',
        Rr: '310 mm',
      },
      result: '769.4246682115568 mm',
      tolerance: 1e-9,
    },
  ],
};
