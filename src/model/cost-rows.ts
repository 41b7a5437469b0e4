import { z } from 'zod';
import {
  day,
  decimal,
  flag,
  id,
  listOf,
  oneOf,
  privateText,
  quantity,
  ref,
  text,
} from './fields.ts';
import { amount, currency, portion } from './money-fields.ts';
import { correctionFields, rowFields, withheld } from './row-fields.ts';
import { percent } from './share-fields.ts';

/** What each category of a cost row is for. */
export const costCategories = [
  'vehicle',
  'part',
  'material',
  'consumable',
  'tool',
  'service',
  'transport',
  'fee',
  'other',
] as const;

/** Which way the value of a cost row goes. Gifts and trades are no money and are shown apart. */
export const costKinds = [
  'payment',
  'deposit',
  'sale',
  'scrap',
  'refund',
  'deposit-back',
  'gift',
  'trade',
] as const;

/** Money paid or taken in, or value received without money: `ledger/costs`. Amounts are positive; the kind of row gives the sign. */
export const costSchema = z.strictObject({
  ...rowFields(),
  amount: amount(),
  tax: oneOf(['inside', 'outside'])
    .meta({ description: 'whether the amount has the tax in it, or it comes on top' })
    .optional(),
  'tax-rate': percent({ description: 'rate of the tax, like 20 %' }).optional(),
  category: oneOf(costCategories),
  phase: ref('phases').optional(),
  'split-phases': listOf(portion('phases'))
    .meta({ description: 'phases that share it: floor:2 paint:1 by weight, floor=20.00 by amount' })
    .optional(),
  source: ref('sources').optional(),
  parts: listOf(ref('parts')).optional(),
  'split-parts': listOf(portion('parts'))
    .meta({ description: 'parts that share it: door:2 lock:1 by weight, door=20.00 by amount' })
    .optional(),
  order: ref('orders').meta({ description: 'the order that it pays, whole or in part' }).optional(),
  mass: quantity().meta({ description: 'what was weighed in, for scrap' }).optional(),
  share: percent({ description: 'how much of it is for this machine, like 40 %' }).optional(),
  what: text(),
  kind: oneOf(costKinds).default('payment'),
  supplier: privateText().optional(),
  receipt: privateText().optional(),
  note: text().optional(),
  withhold: withheld(['amount', 'what', 'note']),
  ...correctionFields('costs'),
});

/** Something ordered and not paid whole yet: `ledger/orders`. Cost rows that name it pay it. */
export const orderSchema = z.strictObject({
  ...rowFields(),
  amount: amount(),
  category: oneOf(costCategories),
  phase: ref('phases'),
  source: ref('sources').optional(),
  parts: listOf(ref('parts')).optional(),
  what: text(),
  supplier: privateText().optional(),
  closed: day().meta({ description: 'day after which nothing more is owed' }).optional(),
  ...correctionFields('orders'),
});

/** What may be spent, from a day on: `ledger/budgets`. A later line for the same phase or category replaces the earlier. */
export const budgetSchema = z.strictObject({
  ...rowFields(),
  amount: amount(),
  phase: ref('phases').optional(),
  category: oneOf(costCategories).optional(),
  contingency: flag().default(false).meta({ description: 'kept for what nobody foresees' }),
  ...correctionFields('budgets'),
});

/** A recorded exchange rate: `ledger/rates`. 1 `from` = rate `to`. */
export const rateSchema = z.strictObject({
  ...rowFields(),
  from: currency(),
  to: currency(),
  rate: decimal(),
  source: text({ description: 'where the rate was read' }),
  ...correctionFields('rates'),
});

/** A row taken back without another in its place: `ledger/withdrawals`. */
export const withdrawalSchema = z.strictObject({
  id: id(),
  date: day(),
  row: ref('rows').meta({ description: 'id of the row that no longer counts' }),
  because: text({ description: 'why it no longer counts' }),
});
