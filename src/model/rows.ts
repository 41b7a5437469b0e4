import { z } from 'zod';
import {
  day,
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
import { amount } from './money-fields.ts';
import { correctionFields, rowFields, withheld } from './row-fields.ts';

/** Time worked: `ledger/hours`. */
export const hoursSchema = z.strictObject({
  ...rowFields(),
  hours: duration(),
  phase: ref('phases'),
  work: ref('work'),
  source: ref('sources')
    .meta({ description: 'machine that was worked on, when it is not the one being built' })
    .optional(),
  who: ref('people').optional(),
  what: text(),
  withhold: withheld(['who', 'what']),
  ...correctionFields('hours'),
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
  /** What it would fetch as it came off: shares the cost of a machine bought whole. */
  value: amount()
    .meta({ description: 'stated value, by which it bears its share of a donor' })
    .optional(),
  'new-price': amount().meta({ description: 'what a new one would have cost' }).optional(),
  estimate: amount().meta({ description: 'what one may cost, while it is not bought' }).optional(),
  'estimate-low': amount().optional(),
  'estimate-high': amount().optional(),
  wanted: day().optional(),
  ordered: day().optional(),
  got: day().optional(),
  fitted: day().optional(),
  scrapped: day().optional(),
  'for-sale': day().optional(),
  asking: amount().meta({ description: 'price asked, while it is for sale' }).optional(),
  sold: day().optional(),
  note: text().optional(),
  recorded: day().optional(),
  ...correctionFields('parts'),
});

/** One dated measuring event of a spec: `ledger/readings`. Raw values are kept as read. */
export const readingSchema = z.strictObject({
  ...rowFields(),
  spec: ref('specs'),
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
  conditions: text().optional(),
  by: ref('people').optional(),
  photo: text({ description: 'file in photos/ that shows the reading' }).optional(),
  note: text().optional(),
  withhold: withheld(['by', 'conditions', 'note', 'photo']),
  ...correctionFields('readings'),
  because: text({
    description: 'why values are excluded, or why it replaces the earlier reading',
  }).optional(),
});

/** One try at finding a part: `ledger/searches`. */
export const searchSchema = z.strictObject({
  ...rowFields(),
  part: ref('parts'),
  result: oneOf(['none', 'listed-not-held', 'promised', 'bought']),
  price: amount().optional(),
  place: privateText().optional(),
  note: text().optional(),
  withhold: withheld(['price', 'note']),
  ...correctionFields('searches'),
});
