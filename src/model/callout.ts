import { z } from 'zod';
import { ref, text } from './fields.ts';
import { point } from './photo-fields.ts';

/** What a callout may say of its place; each says one of these. */
export const calloutSubjects = ['part', 'spec', 'finding', 'label'] as const;

/**
 * Something pointed out on a photo, in fractions of the photo as it is published: upright, straightened and cropped.
 * With `to` it is a dimension line, whose value is a spec.
 */
export const calloutSchema = z
  .strictObject({
    at: point(),
    to: point().optional(),
    part: ref('parts').optional(),
    spec: ref('specs').optional(),
    finding: ref('findings').optional(),
    label: text().optional(),
  })
  .superRefine((callout, context) => {
    const refuse = (message: string, fix: string) =>
      context.issues.push({
        code: 'custom',
        message,
        input: callout,
        params: { name: 'callout', fix },
      });
    const said = calloutSubjects.filter((name) => callout[name] !== undefined);
    if (said.length !== 1)
      refuse('does not say one thing', `write one of ${calloutSubjects.join(', ')}`);
    if (callout.to !== undefined && callout.spec === undefined)
      refuse('is a dimension line without a value', 'add spec: …, or leave out "to"');
    if (callout.to !== undefined && samePlace(callout.at, callout.to))
      refuse('is a dimension line of no length', 'let "to" be another place than "at"');
  });

export type Callout = z.output<typeof calloutSchema>;

function samePlace(one: readonly [number, number], other: readonly [number, number]): boolean {
  return one[0] === other[0] && one[1] === other[1];
}
