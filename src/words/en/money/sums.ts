/** How sums of money came about. */
export const sums = {
  budgetLines: (count: number) => `sum of ${count} ${count === 1 ? 'budget line' : 'budget lines'}`,
  costRows: (count: number) => `sum of ${count} cost ${count === 1 ? 'row' : 'rows'}`,
  estimates: (count: number) => `sum of ${count} ${count === 1 ? 'estimate' : 'estimates'}`,
  openOrders: (count: number) => `sum of ${count} ${count === 1 ? 'open order' : 'open orders'}`,
  orders: (count: number) => `sum of ${count} ${count === 1 ? 'order' : 'orders'}`,
  askingPrices: (count: number) =>
    `sum of ${count} asking ${count === 1 ? 'price' : 'prices'}: an estimate, not counted`,
  credits: (count: number) => `${count} of them credits`,
  giftsOrTrades: (count: number) => `${count} of them gifts or trades at a stated value`,
  shares: (count: number) => `${count} of them a share`,
  leftOut: (count: number) => `${count} left out by rule`,
  labour: (hours: string) => `${hours}, at the stated rate an hour`,
  noRows: 'no rows',
  newestRate: (rate: string) => `not yet paid; estimated at the newest rate, ${rate}`,
  newestPrice: 'newest price seen',
  estimate: 'estimate',
};
