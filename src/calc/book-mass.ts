import type { Calculation } from './calculation.ts';

/** Mass of a row of books on a shelf. */
export const bookMass: Calculation = {
  name: 'book-mass',
  title: 'Mass of a row of books',
  inputs: {
    m_L: {
      what: 'mass of books to a length of shelf',
      quantity: 'mass-per-length',
      unit: 'kg/m',
      above: 0,
    },
    L: { what: 'length of the row', quantity: 'length', unit: 'm', above: 0 },
  },
  result: { quantity: 'mass', unit: 'kg' },
  formula: 'm_L*L',
  source: 'How much do books weigh? (steveroot.co.uk, 2006)',
  assumptions: [
    'the mass to a length was weighed on books like these: 22.5 kg/m for cookery books, 35 kg/m as a rule of thumb for a shelf of 300 mm',
    'one row, none lying on top',
  ],
  caution: 'Books are heavy: a full shelf that tears loose can hurt someone.',
  examples: [
    {
      source: 'How much do books weigh?: 35 kg/m on 500 mm (steveroot.co.uk)',
      inputs: { m_L: '35 kg/m', L: '500 mm' },
      result: '17.5 kg',
      tolerance: 0.05,
    },
    {
      source: 'shelf design: 20 lb to the foot on three feet (woodworkingarchive.biz)',
      inputs: { m_L: '20 lb/ft', L: '3 ft' },
      result: '60 lb',
      tolerance: 0.5,
    },
    {
      source: 'common practice, no source: plain arithmetic',
      inputs: { m_L: '22.5 kg/m', L: '1.35 m' },
      result: '30.375 kg',
      tolerance: 1e-12,
    },
  ],
};
