import type { Words } from '../words.ts';

export const log: Words['log'] = {
  added: 'Mit diesem Eintrag',
  money: 'Geld',
  partsFitted: 'Eingebaute Teile',
  readings: 'Messungen',
  runningTotal: 'Stand bis hier',
  runningTotals: 'Summen bis zu diesem Tag',
  totals: 'Summen',
};
