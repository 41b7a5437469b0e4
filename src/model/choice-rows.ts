import { z } from 'zod';
import { duration, id, listOf, oneOf, ref, text } from './fields.ts';
import { amount } from './money-fields.ts';
import { correctionFields, rowFields, withheld } from './row-fields.ts';

/** How soon a candidate can be had. */
export const availabilities = ['in-hand', 'offered', 'to-order', 'to-make', 'not-found'] as const;

/** Parts that are chosen together: `groups`. */
export const groupSchema = z.strictObject({
  id: id(),
  name: text(),
  parts: listOf(ref('parts'), 2),
  because: text({ description: 'why they go together, and what follows from it' }),
});

/** One source's version of a part: `ledger/candidates`. */
export const candidateSchema = z.strictObject({
  ...rowFields(),
  part: ref('parts'),
  source: ref('sources'),
  name: text().optional(),
  price: amount()
    .meta({
      description: "what it costs; for a donor's part leave it out, its share is worked out",
    })
    .optional(),
  value: amount()
    .meta({ description: "stated value of a donor's part, by which it would bear its share" })
    .optional(),
  hours: duration().meta({ description: 'to make it fit' }).optional(),
  condition: text().optional(),
  remaining: ref('specs')
    .meta({ description: 'spec that gives its remaining thickness, in per cent' })
    .optional(),
  availability: oneOf(availabilities),
  risk: oneOf(['low', 'medium', 'high']),
  'risk-of': text({ description: 'what may go wrong' }).optional(),
  note: text().optional(),
  withhold: withheld(['price', 'note']),
  ...correctionFields('candidates'),
});

/** What was decided, and why: `ledger/choices`. A later choice for the same part is a change of mind; both stay. */
export const choiceSchema = z.strictObject({
  ...rowFields(),
  candidates: listOf(ref('candidates'), 1).meta({
    description: 'the candidates chosen: one, or one for each part of a group',
  }),
  group: ref('groups').optional(),
  ...correctionFields('choices'),
  because: text({ description: 'why' }),
});
