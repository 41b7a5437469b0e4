import { counted } from '../../counted.ts';

/** What each part really cost. */
export const partCosts = {
  title: 'Costs by part',
  description: (project: string) =>
    `What each part of ${project} really cost, its share of a donor machine included.`,
  document: 'Costs by part',
  lead: 'Of {spent} spent, {inParts} is in {parts}.',
  count: (count: number) => counted(count, 'part', 'parts'),
  whoBears: 'Who bears it',
  bearingRule:
    "Each row is borne once. A machine bears what was paid for it whole (vehicle, transport, fee), its rows that name no part, and what was sold or weighed in; a donor's net cost then goes to its parts by stated value. Any other row that names parts is their own, shared as it says.",
  bearers: {
    parts: 'Parts, by the rows that name them',
    machine: (machine: string) => `${machine}, less what was sold of it`,
    shared: (donor: string) => `${donor}, shared over its parts`,
    notShared: (donor: string) => `${donor}, which no part has a share of`,
    rest: 'Neither a part nor a machine',
  },
  parts: 'Parts',
  partsRule:
    'True cost is own costs and the share of a donor; saved is the new price less that. Prices are for all pieces of a line together.',
  partsRuleLeftOut: (count: number) =>
    `True cost is own costs and the share of a donor; saved is the new price less that. Prices are for all pieces of a line together. Left out: ${count} that cost nothing of their own.`,
  label: 'Cost of each part',
  trueCost: 'True cost',
  newPrice: 'New price',
  saved: 'Saved',
  ownCosts: 'Own costs',
  donorShare: 'Donor share',
  shareOf: (whole: string) => `its share of ${whole}`,
  shareOfDonor: (donor: string) => `Its share of ${donor}`,
  together: (total: string, how: string) => `Together ${total}: ${how}. {all}`,
  togetherWithDonor: (total: string, how: string) =>
    `Together ${total}: ${how}, and the share of the donor. {all}`,
  all: 'Costs of all parts',
};
