import { z } from 'zod';
import { day, id, listOf, oneOf, privateText, text, wholeNumber } from './fields.ts';
import { amount, currency } from './money-fields.ts';

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

const rulesSchema = z.strictObject({
  tools: oneOf(['in', 'out'])
    .default('in')
    .meta({ description: 'whether shop tools count in the totals' }),
  labourRate: amount().optional(),
});

/** One machine being rebuilt: `project.yaml` of its folder. */
export const projectSchema = z.strictObject({
  name: text(),
  summary: text(),
  machine: machineSchema,
  builder: text().optional(),
  currency: currency().optional(),
  timeZone: text({ editor: { type: 'string', examples: ['Europe/London'] } }),
  otherUnits: oneOf(['imperial', 'us']).default('imperial'),
  work: listOf(id()).meta({ description: 'kinds of work that hours rows use' }),
  people: z.array(personSchema).min(1),
  rules: rulesSchema.default({ tools: 'in' }),
  status: oneOf(['underway', 'finished']).default('underway'),
  finished: day().optional(),
});
