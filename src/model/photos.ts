import { z } from 'zod';
import { calloutSchema } from './callout.ts';
import { day, flag, id, listOf, oneOf, ref, text } from './fields.ts';
import { areaSchema, box, degrees } from './photo-fields.ts';

/** What a photo shows that its builder may not want to publish. */
export const privateTags = ['plate', 'identity', 'face', 'address'] as const;

/** A photo and what is known of it: `photos`. The file itself stays in the folder `photos/`. */
export const photoSchema = z.strictObject({
  id: id(),
  file: text({ description: 'file name in photos/' }),
  alt: text({ description: 'what the photo shows, for someone who cannot see it' }).optional(),
  caption: text().optional(),
  taken: day().meta({ description: 'day it was taken, where the file does not say' }).optional(),
  phase: ref('phases').optional(),
  parts: listOf(ref('parts')).optional(),
  place: text({ description: 'where on the machine' }).optional(),
  state: oneOf(['as-found', 'before', 'after', 'final']).optional(),
  tags: listOf(id()).optional(),
  /** Areas that are filled before anything is published. */
  hide: z.array(areaSchema).optional(),
  /** Someone has looked at the photo and found nothing that must be hidden. */
  'nothing-to-hide': flag().optional(),
  straighten: degrees().optional(),
  crop: box()
    .meta({ description: 'what is kept, in fractions of the straightened photo' })
    .optional(),
  callouts: z.array(calloutSchema).optional(),
});
