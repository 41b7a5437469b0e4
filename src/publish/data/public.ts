import { camelName } from '../../model/camel.ts';

/** The value of a field (by its name in the files), unless the record withholds it. Private fields are the schema's matter. */
export function publicValue(record: object, field: string): unknown {
  return isWithheld(record, field) ? undefined : valueIn(record, camelName(field));
}

/** Whether a record says that a field of its own stays at home. */
function isWithheld(record: object, field: string): boolean {
  const names = valueIn(record, 'withhold');
  return Array.isArray(names) && names.includes(field);
}

function valueIn(record: object, key: string): unknown {
  // Any record is a group of fields; an interface just can't be read by a name that is worked out.
  return (record as Readonly<Record<string, unknown>>)[key];
}
