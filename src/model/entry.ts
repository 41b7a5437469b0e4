import { z } from 'zod';
import { address, day, flag, listOf, moment, ref, text } from './fields.ts';

const momentSchema = z.strictObject({
  at: moment(),
  label: text(),
  spec: ref('specs').optional(),
  part: ref('parts').optional(),
});

/** What stands in a new draft where the summary will be. */
export const SUMMARY_TO_WRITE = 'One plain sentence that says what happened.';

/** Front matter of a dated MDX page of the log. */
export const entrySchema = z.strictObject({
  title: text(),
  date: day(),
  phase: ref('phases'),
  summary: text({ description: 'one plain sentence, for lists and feeds' }),
  tells: listOf(ref('rows')).optional(),
  video: address().optional(),
  moments: z.array(momentSchema).optional(),
  language: text({
    description: 'language of the entry, where it is not that of the project',
    editor: { type: 'string', examples: ['en-GB'] },
  }).optional(),
  tags: listOf(text()).optional(),
  draft: flag().default(false),
});
