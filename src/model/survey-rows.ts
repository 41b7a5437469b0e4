import { z } from 'zod';
import { day, decimal, id, listOf, oneOf, ref, text } from './fields.ts';
import { correctionFields, rowFields, withheld } from './row-fields.ts';
import { percent } from './share-fields.ts';

/** What a look at a part can find. `sound` says that it was looked at and nothing was found. */
export const findingKinds = [
  'sound',
  'wear',
  'corrosion',
  'thin',
  'filler',
  'perforation',
  'crack',
  'bent',
  'leak',
  'seized',
  'missing',
] as const;

/** One round of looking a machine over: `surveys`. A later one can be compared with it. */
export const surveySchema = z.strictObject({
  id: id(),
  name: text(),
  date: day(),
  by: ref('people').optional(),
  note: text().optional(),
});

/** A step of the project's own scale of condition, best first: `grades`. A part has the first grade whose limits all hold. */
export const gradeSchema = z.strictObject({
  id: id(),
  name: text(),
  definition: text({ description: 'what the grade means, in words' }),
  'remaining-at-least': percent({ description: 'least thickness left, of the nominal' }).optional(),
  'filler-at-most': percent({ description: 'most of its area that may be filler' }).optional(),
  'holes-at-most': percent({
    description: 'most of its area that may be rusted through',
  }).optional(),
  allows: listOf(oneOf(findingKinds))
    .meta({ description: 'findings that a part of this grade may have besides' })
    .optional(),
});

/** Something found on a part: `ledger/findings`. */
export const findingSchema = z.strictObject({
  ...rowFields(),
  survey: ref('surveys'),
  part: ref('parts'),
  source: ref('sources')
    .meta({
      description: "which machine's version of the part, when it is not the part's own source",
    })
    .optional(),
  found: oneOf(findingKinds),
  place: text({ description: 'where on the part' }).optional(),
  area: percent({ description: 'share of its area' }).optional(),
  readings: listOf(ref('readings'))
    .meta({ description: 'readings of thickness taken there' })
    .optional(),
  photo: text({ description: 'file in photos/ that shows it' }).optional(),
  at: listOf(decimal())
    .meta({
      description: 'where on the photo: across and down, as fractions of its width and height',
    })
    .optional(),
  by: ref('people').optional(),
  note: text().optional(),
  withhold: withheld(['by', 'note', 'photo']),
  ...correctionFields('findings'),
});
