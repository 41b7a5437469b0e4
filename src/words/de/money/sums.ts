import type { Words } from '../../keys.ts';

const sumOf = (count: number, one: string, many: string) =>
  `Summe aus ${count} ${count === 1 ? one : many}`;

export const sums: Words['money']['sums'] = {
  budgetLines: (count) => sumOf(count, 'Budgetzeile', 'Budgetzeilen'),
  costRows: (count) => sumOf(count, 'Kostenzeile', 'Kostenzeilen'),
  estimates: (count) => sumOf(count, 'Schätzung', 'Schätzungen'),
  openOrders: (count) => sumOf(count, 'offenen Bestellung', 'offenen Bestellungen'),
  orders: (count) => sumOf(count, 'Bestellung', 'Bestellungen'),
  askingPrices: (count) =>
    `${sumOf(count, 'geforderten Preis', 'geforderten Preisen')}: geschätzt, nicht mitgezählt`,
  credits: (count) => `davon ${count} ${count === 1 ? 'Gutschrift' : 'Gutschriften'}`,
  giftsOrTrades: (count) =>
    `davon ${count} ${count === 1 ? 'Geschenk oder Tausch' : 'Geschenke oder Tauschgeschäfte'} zum angegebenen Wert`,
  shares: (count) => `davon ${count} anteilig`,
  leftOut: (count) => `${count} nach Regel nicht mitgezählt`,
  labour: (hours) => `${hours}, zum angegebenen Stundensatz`,
  noRows: 'keine Zeilen',
  newestRate: (rate) => `noch nicht bezahlt; geschätzt zum neuesten Kurs, ${rate}`,
  newestPrice: 'neuester gesehener Preis',
  estimate: 'Schätzung',
};
