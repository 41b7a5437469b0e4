import type { Calculation } from './calculation.ts';

/** Proof load of a bolt: the pull it takes without staying longer. */
export const boltProofLoad: Calculation = {
  name: 'bolt-proof-load',
  title: 'Proof load of a bolt',
  inputs: {
    A_s: { what: 'stress area', quantity: 'area', unit: 'mm²', above: 0 },
    // ISO 898-1: 8.8 580 MPa to M16, 600 MPa above; 10.9 830 MPa. SAE J429: grades 2, 5, 8 are 55, 85, 120 ksi in the usual sizes.
    S_p: { what: 'proof stress of the bolt', quantity: 'pressure', unit: 'MPa', above: 0 },
  },
  result: { quantity: 'force', unit: 'kN' },
  formula: 'A_s*S_p',
  source:
    'ISO 898-1:2013 for property classes and SAE J429 for grades: proof load is stress area times proof stress (as quoted in trade tables)',
  assumptions: [
    'proof stress by ISO 898-1: class 8.8 is 580 MPa up to M16 and 600 MPa above, class 10.9 is 830 MPa',
    'proof stress by SAE J429: grade 2 is 55 000 psi from ¼ to ¾ in and 33 000 psi from ⅞ to 1½ in; grade 5 is 85 000 psi from ¼ to 1 in and 74 000 psi from 1⅛ to 1½ in; grade 8 is 120 000 psi from ¼ to 1½ in',
    'the bolt is what its head marking says, new, and pulled straight',
    'the nut or the tapped hole holds at least as much',
  ],
  caution:
    'A bolt without a marking, or one that was stretched before, has no proof load. A wrong class can let a wheel, a brake or a lifted load go.',
  examples: [
    {
      source: 'ISO 898-1 table of proof loads, M20 class 8.8 (optimas.com)',
      inputs: { A_s: '245 mm²', S_p: '600 MPa' },
      result: '147.0 kN',
      tolerance: 0.5,
    },
    {
      source: 'ISO 898-1 table of proof loads, M10 class 10.9 (optimas.com)',
      inputs: { A_s: '58.0 mm²', S_p: '830 MPa' },
      result: '48.1 kN',
      tolerance: 0.05,
    },
    {
      source: 'common practice, no source: ½-13 grade 5 by exact arithmetic',
      inputs: { A_s: '0.1419 in²', S_p: '85000 psi' },
      result: '12061.5 lbf',
      tolerance: 1e-8,
    },
  ],
};
