import { z } from 'zod';
import { factsOf } from './facts.ts';
import { allKinds, homeKinds, listKinds } from './kinds.ts';

/**
 * JSON Schema (2020-12) of one kind's file, for completion in an editor: file name → schema.
 * Rules that need other records (ids that exist, days in order) can't be said there; `npm run check` knows them.
 */
export function editorSchemas(): ReadonlyMap<string, object> {
  return new Map(
    Object.entries({ ...allKinds, ...homeKinds }).map(([kind, schema]) => {
      const whole = kind in listKinds || kind in homeKinds ? z.array(schema) : schema;
      return [
        `${kind}.json`,
        z.toJSONSchema(whole, { target: 'draft-2020-12', io: 'input', override: describeField }),
      ] as const;
    }),
  );
}

function describeField({
  zodSchema,
  jsonSchema,
}: {
  zodSchema: unknown;
  jsonSchema: Record<string, unknown>;
}): void {
  const facts = factsOf(zodSchema as z.ZodType);
  for (const key of ['ref', 'reads', 'private', 'editor', 'item']) delete jsonSchema[key];
  if (facts.item) {
    const items = z.toJSONSchema(facts.item, { io: 'input', override: describeField });
    delete items.$schema;
    for (const key of Object.keys(jsonSchema)) if (key !== 'description') delete jsonSchema[key];
    Object.assign(jsonSchema, {
      anyOf: [{ type: 'array', items }, { type: ['string', 'number'] }],
    });
  } else if (facts.editor) {
    delete jsonSchema.type;
    Object.assign(jsonSchema, facts.editor);
  }
}
