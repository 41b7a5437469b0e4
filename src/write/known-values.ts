import type { KnownIds } from '../check/known-ids.ts';
import { factsOf, refOf } from '../model/facts.ts';
import type { ListKind } from '../model/kinds.ts';
import { shapeOf } from './kind-fields.ts';

/** The texts that a field can hold, where they are few and known: ids of another kind, or words of a fixed list. */
export function knownValues(kind: ListKind, name: string, known: KnownIds): string[] {
  const schema = shapeOf(kind)[name];
  if (schema === undefined) return [];
  const ref = refOf(schema);
  if (ref !== undefined) return [...(known.get(ref) ?? [])];
  const facts = factsOf(schema);
  const words = (facts.item ? factsOf(facts.item) : facts).editor?.enum;
  if (Array.isArray(words)) return words.map(String);
  if (kind === 'parts' && name === 'system') return [...(known.get('systems') ?? [])];
  return facts.reads === 'flag' ? ['true', 'false'] : [];
}

/** Whether a field takes a text by itself, before it is looked at together with others. */
export function takes(kind: ListKind, name: string, text: string, known: KnownIds): boolean {
  const schema = shapeOf(kind)[name];
  if (schema === undefined || !schema.safeParse(text).success) return false;
  const ref = refOf(schema);
  return ref === undefined || (known.get(ref)?.has(text.split(/[:=]/, 1)[0] ?? '') ?? true);
}

/** What is wrong with a text for a field, and what to type instead. */
export function wrongWith(
  kind: ListKind,
  name: string,
  text: string,
): { readonly wrong: string; readonly fix?: string | undefined } | undefined {
  const issue = shapeOf(kind)[name]?.safeParse(text).error?.issues[0];
  if (issue === undefined) return undefined;
  const { params } = issue as { readonly params?: { readonly fix?: string } };
  return { wrong: issue.message, fix: params?.fix };
}

/** Whether a field holds words of the builder's own, which any text would be. */
export function isFreeText(kind: ListKind, name: string): boolean {
  const schema = shapeOf(kind)[name];
  return schema !== undefined && refOf(schema) === undefined && factsOf(schema).reads === 'text';
}
