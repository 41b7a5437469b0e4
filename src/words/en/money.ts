import { budget } from './money/budget.ts';
import { costs } from './money/costs.ts';
import { donor } from './money/donor.ts';
import { forecast } from './money/forecast.ts';
import { orders } from './money/orders.ts';
import { partCosts } from './money/part-costs.ts';
import { sums } from './money/sums.ts';
import { uncertainty } from './money/uncertainty.ts';

/** What the machine cost, may cost and will cost. */
export const money = {
  costs,
  partCosts,
  donor,
  budget,
  forecast,
  orders,
  sums,
  uncertainty,
  categories: {
    vehicle: 'vehicle',
    part: 'part',
    material: 'material',
    consumable: 'consumable',
    tool: 'tool',
    service: 'service',
    transport: 'transport',
    fee: 'fee',
    other: 'other',
  },
  kinds: {
    payment: 'payment',
    deposit: 'deposit',
    sale: 'sale',
    scrap: 'scrap',
    refund: 'refund',
    'deposit-back': 'deposit back',
    gift: 'gift',
    trade: 'trade',
  },
  notTied: {
    phase: 'not tied to a phase',
    source: 'not tied to a source',
  },
  /** From one amount to another. */
  range: (low: string, high: string) => `${low} to ${high}`,
  /** An amount in another currency, and the rate that it was converted at. */
  atRate: (amount: string, rate: string) => `${amount} at ${rate}`,
};
