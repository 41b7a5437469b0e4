import type { Words } from '../../keys.ts';

export const uncertainty: Words['money']['uncertainty'] = {
  label: 'Messunsicherheitsbudget',
  input: 'Eingangsgröße',
  whatItIs: 'Bedeutung',
  sensitivity: 'Empfindlichkeit',
  shareOfVariance: 'Anteil an u²',
  given: 'vorgegeben',
};
