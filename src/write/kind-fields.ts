import type { z } from 'zod';
import { factsOf } from '../model/facts.ts';
import { type ListKind, listKinds, rowKinds } from '../model/kinds.ts';
import type { FieldNames } from './yaml-append.ts';

/** The fields of a kind by their names in files, as its schema has them. */
export function shapeOf(kind: ListKind): Readonly<Record<string, z.ZodType>> {
  return (listKinds[kind] as z.ZodObject).shape as Record<string, z.ZodType>;
}

/** Fields that every record of a kind has. */
export function requiredFields(kind: ListKind): string[] {
  return Object.entries(shapeOf(kind)).flatMap(([name, schema]) =>
    schema.safeParse(undefined).success ? [] : [name],
  );
}

/** What writing a list has to know of its fields. */
export function fieldNames(kind: ListKind): FieldNames {
  const shape = shapeOf(kind);
  return {
    order: Object.keys(shape),
    isList: (name) => {
      const schema = shape[name];
      return schema !== undefined && factsOf(schema).item !== undefined;
    },
  };
}

/** Whether a kind fits a table: rows with a date, and no field in groups. */
export function fitsTable(kind: ListKind): boolean {
  const shape = shapeOf(kind);
  return (
    (rowKinds as readonly ListKind[]).includes(kind) &&
    shape.date !== undefined &&
    Object.values(shape).every((schema) => {
      const { reads, item } = factsOf(schema);
      return reads !== undefined || item !== undefined;
    })
  );
}
