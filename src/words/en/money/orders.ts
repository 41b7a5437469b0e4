/** Orders, what is still to buy, and what is overdue. */
export const orders = {
  title: 'Orders',
  none: 'Nothing was ordered ahead of its payment.',
  ordered: 'Ordered',
  paidSoFar: 'Paid so far',
  stillOwed: 'Still owed',
  correctedLink: 'corrected',
  withdrawnLink: 'withdrawn',
  payments: (count: number) =>
    `${count} cost ${count === 1 ? 'row names' : 'rows name'} this order`,
  overPaid: (amount: string) => `${amount} more than was ordered for`,
  states: { open: 'open', paid: 'paid', closed: 'closed' },
  about: (amount: string, rate: string) => `(about ${amount} at ${rate})`,
  toBuy: {
    title: 'Still to buy',
    none: 'No part is wanted that is not ordered or in hand.',
    label: 'Parts still to buy',
    wantedSince: 'Wanted since',
    mayCost: 'May cost',
    restsOn: 'That rests on',
    noEstimate: 'no estimate',
    estimate: "the builder's estimate",
    search: 'the newest price seen, {day}',
    searchBetween:
      'the newest price seen, {day}; lowest and highest are the ends of all that were seen',
    nothing: 'nothing yet, so it is not in the sums',
  },
  overdue: 'Overdue: {parts} {note}',
  overdueNote: (kind: string, days: number) =>
    `sent out for ${kind}, due {due}, ${days} ${days === 1 ? 'day' : 'days'} ago ({row})`,
};
