/** `planned-start` → `plannedStart`: files use hyphens, code uses its own custom. */
type Camel<Key> = Key extends `${infer Head}-${infer Tail}`
  ? `${Head}${Capitalize<Camel<Tail>>}`
  : Key;

/** A record with its keys as code writes them. */
export type CamelKeys<Fields> = { readonly [Key in keyof Fields as Camel<Key>]: Fields[Key] };

/** A field's name as code writes it. */
export function camelName(name: string): string {
  return name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
}

/** The same record with hyphenated keys turned into camel case. */
export function camelKeys<Fields extends object>(fields: Fields): CamelKeys<Fields> {
  const renamed = Object.entries(fields).map(([key, value]) => [camelName(key), value]);
  return Object.fromEntries(renamed) as CamelKeys<Fields>;
}
