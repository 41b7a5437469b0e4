/** The log and its entries. */
export const log = {
  added: 'This entry added',
  money: 'Money',
  partsFitted: 'Parts fitted',
  readings: 'Readings',
  runningTotal: 'Running total',
  runningTotals: 'Running totals',
  totals: 'Totals',
};
