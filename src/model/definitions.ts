import { z } from 'zod';
import {
  arithmetic,
  day,
  decimal,
  duration,
  id,
  link,
  listOf,
  oneOf,
  privateText,
  quantity,
  quantityKind,
  text,
  unit,
} from './fields.ts';

/** Where parts come from: `sources`. */
export const sourceSchema = z.strictObject({
  id: id(),
  kind: oneOf(['base', 'donor', 'new', 'made', 'repaired']),
  name: text(),
  acquired: day().optional(),
  note: text().optional(),
});

/** A named stretch of the work: `phases`. Actual start and hours come from hours rows. */
export const phaseSchema = z.strictObject({
  id: id(),
  name: text(),
  summary: text(),
  'planned-start': day(),
  'planned-finish': day(),
  'planned-hours': duration(),
  'planned-hours-least': duration().optional(),
  'planned-hours-most': duration().optional(),
  after: listOf(link('phases'))
    .meta({
      description: 'phases that it follows; strip:+5 starts five days after, strip:-3 overlaps',
    })
    .optional(),
  finished: day().optional(),
  note: text().optional(),
});

/** Inputs of a calculation: ids of specs, quantities with units, or lists of them. */
const inputsField = () => z.record(z.string(), z.union([arithmetic(), z.array(arithmetic())]));

/** Something measured or worked out that readers care about: `specs`. */
export const specSchema = z.strictObject({
  id: id(),
  name: text(),
  about: text({ description: 'what is measured, where, and why it matters' }),
  quantity: quantityKind(),
  unit: unit(),
  system: id().meta({
    editor: { type: 'string' },
    description: 'group on the pages: body, brakes …',
  }),
  place: text().optional(),
  min: quantity().optional(),
  max: quantity().optional(),
  nominal: quantity().optional(),
  tolerance: quantity().optional(),
  target: quantity().optional(),
  better: oneOf(['lower', 'higher', 'nominal']).optional(),
  /** Limits hold for this length; the readings were taken over another one. */
  per: quantity().optional(),
  over: quantity().optional(),
  /** Worked out of other specs: by a calculation of the library or by a formula of its own. */
  calc: text({ description: 'name of a calculation of the library' }).optional(),
  formula: arithmetic({ description: 'arithmetic over the inputs' }).optional(),
  inputs: inputsField().optional(),
  carried: listOf(text())
    .meta({
      description:
        'inputs whose newest earlier value still stands; the others are read on the same day',
    })
    .optional(),
});

/** What took a reading: `instruments`. */
export const instrumentSchema = z.strictObject({
  id: id(),
  name: text(),
  quantity: quantityKind(),
  step: quantity().optional(),
  'stated-error': quantity().optional(),
  'certificate-u': quantity().optional(),
  'certificate-k': decimal().optional(),
  calibrated: day().optional(),
  'calibration-due': day().optional(),
  serial: privateText().optional(),
  note: text().optional(),
});
