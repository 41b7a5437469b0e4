import { z } from 'zod';
import { dossierSchema, identitySchema } from './dossier.ts';
import { day, duration, id, listOf, oneOf, privateText, text, wholeNumber } from './fields.ts';
import { amount, currency } from './money-fields.ts';
import { inOrShare } from './share-fields.ts';

/** The machine that is being rebuilt. */
const machineSchema = z.strictObject({
  maker: text(),
  model: text(),
  year: wholeNumber(),
  kind: text({ description: 'what sort of machine it is' }),
  identity: privateText().optional(),
});

const personSchema = z.strictObject({
  id: id(),
  name: text({
    description: 'public name; without one the person is shown as "helper"',
  }).optional(),
});

const WEEKDAYS = [
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
  'sunday',
] as const;

/** Hours that can be worked on each day of the week; none where nothing stands. */
const weekSchema = z.strictObject(
  Object.fromEntries(WEEKDAYS.map((weekday) => [weekday, duration().optional()])) as {
    [Weekday in (typeof WEEKDAYS)[number]]: z.ZodOptional<ReturnType<typeof duration>>;
  },
);

/** Days on which nothing is worked, or other hours than usual. */
const awaySchema = z.strictObject({
  from: day(),
  to: day(),
  why: text().optional(),
});

const rulesSchema = z.strictObject({
  tools: inOrShare()
    .default('in')
    .meta({ description: 'whether shop tools count in the totals: in, out, or a share like 40 %' }),
  gifts: oneOf(['in', 'out'])
    .default('out')
    .meta({ description: 'whether gifts count in the totals, at their stated value' }),
  trades: oneOf(['in', 'out']).default('out').meta({
    description: 'whether things got in trade count in the totals, at their stated value',
  }),
  labourRate: amount()
    .meta({ description: 'value of an hour of own work; it is shown apart from money spent' })
    .optional(),
});

/** One machine being rebuilt: `project.yaml` of its folder. */
export const projectSchema = z.strictObject({
  name: text(),
  summary: text(),
  machine: machineSchema,
  builder: text().optional(),
  language: text({
    description: "language of the builder's own words, where it is not that of the site",
    editor: { type: 'string', examples: ['en-GB'] },
  }).optional(),
  currency: currency().optional(),
  timeZone: text({ editor: { type: 'string', examples: ['Europe/London'] } }),
  otherUnits: oneOf(['imperial', 'us']).default('imperial'),
  work: listOf(id()).meta({ description: 'kinds of work that hours rows use' }),
  people: z.array(personSchema).min(1),
  week: weekSchema.optional(),
  away: z.array(awaySchema).optional(),
  rules: rulesSchema.default({ tools: 'in', gifts: 'out', trades: 'out' }),
  markKey: text({
    description: 'public key that signs the marks, as the mark command prints it',
  }).optional(),
  identity: identitySchema.optional(),
  dossier: dossierSchema.default({ costs: 'totals', photos: 'some', identity: 'masked' }),
  status: oneOf(['underway', 'finished']).default('underway'),
  finished: day().optional(),
});
