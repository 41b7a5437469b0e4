import { z } from 'zod';
import { day, flag, listOf, oneOf, privateText, ref, text } from './fields.ts';
import { correctionFields, rowFields } from './row-fields.ts';

/** Something done to parts before they are fitted, here or sent out: `ledger/preparations`. It begins on its date. */
export const preparationSchema = z.strictObject({
  ...rowFields(),
  parts: listOf(ref('parts'), 1),
  kind: oneOf(['blasting', 'coating', 'machining', 'welding', 'repair', 'test', 'other']),
  what: text(),
  out: flag().default(false).meta({ description: 'whether the parts left the workshop' }),
  place: privateText().optional(),
  due: day().meta({ description: 'day they were promised back' }).optional(),
  back: day().meta({ description: 'day they were done, or came back' }).optional(),
  ...correctionFields('preparations'),
});

/** A stretch in which a phase could not go on: `ledger/waits`. It begins on its date. */
export const waitSchema = z.strictObject({
  ...rowFields(),
  phase: ref('phases'),
  for: oneOf(['part', 'preparation', 'weather', 'person', 'money', 'other']),
  part: ref('parts').optional(),
  preparation: ref('preparations').optional(),
  what: text(),
  expected: day().meta({ description: 'day it may end' }).optional(),
  until: day().meta({ description: 'day it ended' }).optional(),
  ...correctionFields('waits'),
});
