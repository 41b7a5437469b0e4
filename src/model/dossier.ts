import { z } from 'zod';
import { readBy } from './field.ts';
import { flag, oneOf, privateText, ref, text } from './fields.ts';

/** How much of the money a dossier tells, from nothing to every row. */
export const costLevels = ['none', 'totals', 'categories', 'rows'] as const;

/** `masked` or `none`; whole is for paper alone, and says where that is asked for. */
const identityShown = () =>
  readBy<'none' | 'masked'>(
    'word',
    (value) => {
      if (value === 'masked' || value === 'none') return value;
      if (value !== 'full')
        return { wrong: 'is not one of the words known here', fix: 'write masked or none' };
      return {
        wrong: 'would publish whole numbers',
        fix: 'write masked; "npm run dossier -- --identity full" prints them for you alone',
      };
    },
    { editor: { enum: ['none', 'masked'] } },
  );

/** What the dossier of a project shows: `dossier` of project.yaml. Left out, it is what the defaults say. */
export const dossierSchema = z.strictObject({
  costs: oneOf(costLevels)
    .default('totals')
    .meta({ description: 'how much of the money it tells: none, totals, categories or rows' }),
  photos: oneOf(['none', 'some', 'all'])
    .default('some')
    .meta({ description: 'none, the first of each entry, or all that are published' }),
  identity: identityShown()
    .default('masked')
    .meta({ description: 'whether it has the identity page; whole numbers are never published' }),
});

/** A number or plate that says which machine it is. */
const identityMarkSchema = z.strictObject({
  what: text({ description: 'frame number, body plate, bed number …' }),
  where: text({ description: 'where it stands on the machine' }).optional(),
  source: ref('sources').meta({ description: 'machine that it came with' }).optional(),
  value: privateText().optional(),
  released: flag()
    .default(false)
    .meta({ description: 'whether the last characters of the value may be published' }),
});

const paperSchema = z.strictObject({
  what: text({ description: 'registration document, bill of sale, inspection record …' }),
  source: ref('sources').meta({ description: 'machine that it is for' }).optional(),
  held: flag().meta({ description: 'whether the builder has it' }),
  note: text().optional(),
});

/** Which machine's identity the result keeps, and what shows it: `identity` of project.yaml. */
export const identitySchema = z.strictObject({
  keeps: ref('sources').meta({ description: 'machine whose identity the result keeps' }),
  because: text({ description: 'why it is that one' }).optional(),
  marks: z.array(identityMarkSchema).default([]),
  papers: z.array(paperSchema).default([]),
});
