import type { Words } from '../keys.ts';

export const ledger: Words['ledger'] = {
  allYears: 'Alle Jahre',
  addedInYear: 'Im Jahr dazu',
  broughtForward: 'Übertrag',
  rowCount: 'Zeilen',
  totalAfterYear: 'Stand danach',
  year: 'Jahr',
  years: 'Zeilen nach Jahren',
  carriedOn: 'Die laufende Summe geht von Jahr zu Jahr weiter.',
  rowsOf: (year) => `Zeilen von ${year} nach ihrer Nummer`,
  costsOf: (year) => `Kosten ${year}`,
  hoursOf: (year) => `Stunden ${year}`,
  allCostsOf: (year, name) => `Alle Kostenzeilen von ${name} im Jahr ${year}, mit laufender Summe.`,
  allHoursOf: (year, name) =>
    `Alle Stundenzeilen von ${name} im Jahr ${year}, mit laufender Summe.`,
};
