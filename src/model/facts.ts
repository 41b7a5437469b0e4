import { z } from 'zod';
import type { FieldFacts } from './field.ts';

interface Facts extends FieldFacts {
  /** Schema of a list's items. */
  readonly item?: z.ZodType;
}

/** What a field's schema says of it besides its type, looked for under `optional` and `default`. */
export function factsOf(schema: z.ZodType): Facts {
  const own = (schema.meta() ?? {}) as Facts;
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault)
    return { ...factsOf(schema.unwrap() as z.ZodType), ...own };
  return own;
}

/** The kind that a field's ids belong to, and whether it holds a list of them. */
export function refOf(schema: z.ZodType): string | undefined {
  const facts = factsOf(schema);
  return facts.ref ?? (facts.item ? factsOf(facts.item).ref : undefined);
}
