/** The account of a machine that was bought to be taken apart. */
export const donor = {
  description: (donor: string) =>
    `What ${donor} cost, what was sold of it, and what each part taken from it really cost.`,
  document: 'Donor account',
  lead: (how: string) => `Net cost {total}, ${how}. {note}`,
  drawingTitle: (donor: string, net: string) =>
    `${donor}, from what it was bought for to its net cost, ${net}.`,
  drawn: 'Wide: paid and taken in.',
  drawnWithEstimate: 'Wide: paid and taken in. Dashed: an estimate, not counted.',
  account: 'Account',
  accountRule:
    "The account has every row of this machine for the whole of it (vehicle, transport, fee), those that name no part, and what was sold or weighed in. A row for the work on a part, once it was off, is that part's own cost and not in here.",
  label: 'Donor account',
  line: 'Line',
  lines: {
    bought: 'Bought',
    carriage: 'Carriage',
    other: 'Other costs of taking it apart',
    sold: 'Sold',
    scrap: 'Weighed in as scrap',
    back: 'Refunds and deposits back',
  },
  scrap: (mass: string, price: string) => `${mass}, ${price} a kilogram`,
  net: 'Net cost',
  stillToSell: 'Still to sell',
  stillToSellEstimate: 'Still to sell, estimate',
  estimate: 'estimate, not counted',
  noPrice: 'no price yet',
  hours: 'Hours spent on it',
  labour: (value: string, hours: string, rate: string) =>
    `${value} for ${hours} of own work at ${rate} an hour; not in the money`,
  shares: 'What each part cost',
  sharesRule:
    'The net cost is shared over the parts in hand or fitted in proportion to their stated values, what each would have fetched as it came off; pence or cents left over go to the largest remainders. Saved is the new price less the true cost. All prices are for the pieces of a line together.',
  noShares:
    'No part of this machine has a stated value, so its net cost is not shared over the parts.',
  withoutValue: 'Without a stated value, and so bearing nothing: {parts}.',
  everyPart: 'What every part of the project cost',
  sharesLabel: 'Shares of the net cost',
  statedValue: 'Stated value',
  share: 'Share',
  all: 'All',
  inEntry: (donor: string) => `Account of ${donor}`,
  caption: (donor: string, day: string) => `${donor}, as of ${day}`,
  today: '{account}, and what each part of it cost.',
  accountToday: 'Its account today',
};
