import { day, id, listOf, oneOf, ref, text } from './fields.ts';

/** Fields of every row: its name, the day it is about, the day it was written down. */
export const rowFields = () => ({
  id: id(),
  date: day(),
  recorded: day().meta({ description: 'day it was written down, when that is later' }).optional(),
});

/** Fields of a row that replaces an earlier one of its kind; the earlier one stays, struck. */
export const correctionFields = (kind: string) => ({
  corrects: ref(kind)
    .meta({ description: 'id of the earlier row that this one replaces' })
    .optional(),
  because: text({ description: 'why it replaces the earlier row' }).optional(),
});

/** Names of the fields of a row that stay at home though they could be published. */
export const withheld = <const Name extends string>(names: readonly Name[]) =>
  listOf(oneOf(names))
    .meta({ description: `fields of this row that are not published: ${names.join(', ')}` })
    .optional();
