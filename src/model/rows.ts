import { z } from 'zod';
import {
  day,
  decimal,
  duration,
  id,
  listOf,
  oneOf,
  privateText,
  quantity,
  readValue,
  ref,
  text,
  unit,
  wholeNumber,
} from './fields.ts';
import { amount, currency } from './money-fields.ts';

/** Time worked: `ledger/hours`. */
export const hoursSchema = z.strictObject({
  id: id(),
  date: day(),
  hours: duration(),
  phase: ref('phases'),
  work: ref('work'),
  who: ref('people').optional(),
  what: text(),
  recorded: day().optional(),
});

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

/** Money paid or taken in: `ledger/costs`. Amounts are positive; the kind of row gives the sign. */
export const costSchema = z.strictObject({
  id: id(),
  date: day(),
  amount: amount(),
  category: oneOf(costCategories),
  phase: ref('phases'),
  source: ref('sources').optional(),
  parts: listOf(ref('parts')).optional(),
  what: text(),
  kind: oneOf(['payment', 'sale', 'refund', 'deposit-back']).default('payment'),
  supplier: privateText().optional(),
  receipt: privateText().optional(),
  recorded: day().optional(),
});

/** A part of the machine: `ledger/parts`. Its state on a day is the furthest of its dated steps. */
export const partSchema = z.strictObject({
  id: id(),
  name: text(),
  system: id().meta({
    editor: { type: 'string' },
    description: 'group on the pages: body, brakes …',
  }),
  source: ref('sources'),
  phase: ref('phases').optional(),
  quantity: wholeNumber().default(1),
  mass: quantity().optional(),
  wanted: day().optional(),
  ordered: day().optional(),
  got: day().optional(),
  fitted: day().optional(),
  scrapped: day().optional(),
  sold: day().optional(),
  note: text().optional(),
});

/** One dated measuring event of a spec: `ledger/readings`. Raw values are kept as read. */
export const readingSchema = z.strictObject({
  id: id(),
  spec: ref('specs'),
  date: day(),
  state: oneOf(['as-found', 'before', 'after', 'final']),
  values: listOf(readValue(), 1),
  unit: unit(),
  instrument: ref('instruments'),
  /** Readings with one zero share the error of their instrument. */
  zero: id()
    .meta({
      description:
        'name of the zero it was taken from; readings with one zero share the error of the instrument',
    })
    .optional(),
  /** Readings taken together have their repeats in pairs. */
  together: id()
    .meta({
      description: 'name of a set read together, value by value; their scatter is then correlated',
    })
    .optional(),
  excluded: listOf(wholeNumber())
    .meta({ description: 'positions (from 1) of values that do not count' })
    .optional(),
  because: text({ description: 'why values are excluded' }).optional(),
  conditions: text().optional(),
  by: ref('people').optional(),
  photo: text({ description: 'file in photos/ that shows the reading' }).optional(),
  note: text().optional(),
  recorded: day().optional(),
});

/** A recorded exchange rate: `ledger/rates`. 1 `from` = rate `to`. */
export const rateSchema = z.strictObject({
  id: id(),
  date: day(),
  from: currency(),
  to: currency(),
  rate: decimal(),
  source: text({ description: 'where the rate was read' }),
});

/** One try at finding a part: `ledger/searches`. */
export const searchSchema = z.strictObject({
  id: id(),
  date: day(),
  part: ref('parts'),
  result: oneOf(['none', 'listed-not-held', 'promised', 'bought']),
  price: amount().optional(),
  place: privateText().optional(),
  note: text().optional(),
});
