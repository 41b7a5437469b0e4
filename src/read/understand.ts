import type { z } from 'zod';
import { type CamelKeys, camelKeys } from '../model/camel.ts';
import { nearest, suggest } from './nearest.ts';
import { type Place, type Problem, problemAt, withMend } from './problem.ts';
import type { Path, RawRecord, RawValue } from './raw.ts';

/** A record that has its type, and still knows where it stands. */
export interface Understood<T> {
  readonly value: T;
  readonly raw: RawRecord;
}

/** Gives a raw record its type, or says everything that is wrong with it. */
export function understand<Schema extends z.ZodObject>(
  raw: RawRecord,
  schema: Schema,
  kind: string,
): Understood<CamelKeys<z.output<Schema>>> | Problem[] {
  const result = schema.safeParse(raw.value);
  if (result.success) return { value: camelKeys(result.data), raw };
  const { issues } = result.error;
  const meant = misspelt(issues, schema);
  return issues
    .filter(
      ({ path }) => valueAt(raw.value, path as Path) !== undefined || !meant.has(path.join('.')),
    )
    .flatMap((issue) => explain(issue, raw, schema, kind));
}

/** Paths of the fields that unknown ones stand for: a misspelt field is not also a missing one. */
function misspelt(issues: readonly z.core.$ZodIssue[], schema: z.ZodObject): ReadonlySet<string> {
  return new Set(
    issues.flatMap((issue) => {
      if (issue.code !== 'unrecognized_keys') return [];
      const known = keysAt(schema, issue.path as Path);
      return issue.keys.flatMap((key) => [...issue.path, nearest(key, known) ?? key].join('.'));
    }),
  );
}

function explain(
  issue: z.core.$ZodIssue,
  raw: RawRecord,
  schema: z.ZodObject,
  kind: string,
): Problem[] {
  const path = issue.path as Path;
  const name = path.length > 0 ? path.join('.') : kind;
  const place = raw.placeOf(path);
  const found = valueAt(raw.value, path);

  if (issue.code === 'unrecognized_keys') {
    const known = keysAt(schema, path);
    return issue.keys.map((key) =>
      problemAt(
        raw.keyPlaceOf([...path, key]),
        'field/unknown',
        `unknown field "${key}"`,
        suggest(key, known) ?? `known fields: ${known.join(', ')}`,
      ),
    );
  }
  if (found === undefined) {
    const fix = place.file.endsWith('.csv')
      ? `fill in the column "${name}"`
      : `add ${path.at(-1) ?? name}: …`;
    return [problemAt(place, 'field/missing', `"${name}" is missing`, fix)];
  }
  if (issue.code === 'custom') {
    const problem = problemAt(
      place,
      `value/${issue.params?.name ?? 'wrong'}`,
      `${name}: "${shown(found)}" ${issue.message}`,
      issue.params?.fix,
    );
    return typeof found === 'string'
      ? [withMend(problem, found.trim(), issue.params?.mend)]
      : [problem];
  }
  return [wrongShape(place, name, found, issue)];
}

function wrongShape(place: Place, name: string, found: RawValue, issue: z.core.$ZodIssue): Problem {
  const got =
    typeof found === 'string'
      ? `the text "${shown(found)}"`
      : Array.isArray(found)
        ? 'a list'
        : 'a group of fields';
  const wanted: Record<string, string> = {
    string: 'one text',
    array: 'a list',
    object: 'a group of fields',
  };
  const expected =
    issue.code === 'invalid_type'
      ? (wanted[issue.expected] ?? issue.expected)
      : issue.code === 'too_small'
        ? 'at least one item'
        : 'one text or a list of texts';
  return problemAt(
    place,
    'value/type',
    `${name}: ${got} stands where ${expected} is wanted`,
    undefined,
  );
}

function shown(value: RawValue): string {
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

function valueAt(value: RawValue, path: Path): RawValue | undefined {
  let current: RawValue | undefined = value;
  for (const step of path) {
    // The items of a list in one cell.
    if (typeof current === 'string')
      return typeof step === 'number' ? current.trim().split(/\s+/)[step] : current;
    if (current === undefined || !Object.hasOwn(current, step)) return undefined;
    current = (current as Record<string | number, RawValue>)[step];
  }
  return current;
}

function keysAt(schema: z.ZodObject, path: Path): string[] {
  let current = schema as unknown as {
    shape?: Record<string, unknown>;
    element?: unknown;
    unwrap?: () => unknown;
  };
  for (const step of path) {
    const next = typeof step === 'number' ? current.element : current.shape?.[step];
    current = (next ?? {}) as typeof current;
    while (typeof current.unwrap === 'function' && current.element === undefined)
      current = current.unwrap() as typeof current;
  }
  return Object.keys(current.shape ?? {});
}
