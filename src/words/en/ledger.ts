/** The pages of rows of costs and hours. */
export const ledger = {
  allYears: 'All years',
  addedInYear: 'Added in the year',
  broughtForward: 'Brought forward',
  rowCount: 'Rows',
  totalAfterYear: 'Total after it',
  year: 'Year',
  years: 'Rows by year',
  carriedOn: 'The running total goes on from year to year.',
  rowsOf: (year: string) => `Rows of ${year} by their ids`,
  costsOf: (year: string) => `Costs of ${year}`,
  hoursOf: (year: string) => `Hours of ${year}`,
  allCostsOf: (year: string, name: string) =>
    `Every cost row of ${name} in ${year}, with the running total.`,
  allHoursOf: (year: string, name: string) =>
    `Every hours row of ${name} in ${year}, with the running total.`,
};
