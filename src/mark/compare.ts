import { canonicalJson } from '../trust/canonical-json.ts';
import { privateHash, type RowFields, type RowValue, rowText } from '../trust/row-hash.ts';
import type { FoundRow } from './ledger-rows.ts';
import { type MarkedRow, publicFields } from './marked-rows.ts';
import { type Secret, saltOf, secretOf } from './salts.ts';
import { factsOfField, type WrittenFields } from './written-fields.ts';

/** A published field that is not as it was; `was` or `is` is missing where the field was or is. */
export interface FieldChange {
  readonly field: string;
  readonly was: RowValue | undefined;
  readonly is: RowValue | undefined;
}

/** How a row of today differs from what it was marked as. */
export interface RowChange {
  readonly fields: readonly FieldChange[];
  /** What the hash tells of the fields that stay at home; `unknown` when the secret is lost. */
  readonly private: 'same' | 'gained' | 'changed' | 'unknown';
}

/** Kinds whose rows grow over the months: an order is closed, a part is fitted, comes back or is no longer waited for. They gain fields, and never change or lose one. */
const GROWING: ReadonlySet<string> = new Set(['parts', 'orders', 'preparations', 'waits']);

/** What changed of a row since it was marked, or undefined when nothing did. */
export function compareRow(
  { kind, id }: FoundRow,
  today: WrittenFields,
  marked: MarkedRow,
  secrets: readonly Secret[],
): RowChange | undefined {
  const secret = secretOf(marked.serial, secrets);
  const salt = secret && saltOf(secret, kind, id);
  const hasPrivate = Object.keys(today.private).length > 0;
  // By far the most rows are what they were; the whole text says so at once.
  if (salt !== undefined || !hasPrivate) {
    const { serial } = marked;
    const text = rowText({ kind, id, serial, public: today.public, private: today.private, salt });
    if (text === marked.text) return undefined;
  }
  const fields = changesOf(publicFields(marked), today.public);
  const hidden = privateChange(today.private, marked.privateHash, salt);
  const same = hidden === 'same' || hidden === 'unknown';
  return fields.length === 0 && same ? undefined : { fields, private: hidden };
}

function changesOf(was: RowFields, is: RowFields): FieldChange[] {
  const names = new Set([...Object.keys(was), ...Object.keys(is)]);
  return [...names].flatMap((field) => {
    const [before, now] = [was[field], is[field]];
    const same =
      before !== undefined && now !== undefined && canonicalJson(before) === canonicalJson(now);
    return same ? [] : [{ field, was: before, is: now }];
  });
}

/** Only a hash was kept, so what was gained shows by leaving fields out until the hash is met. */
function privateChange(
  fields: RowFields,
  hash: string | undefined,
  salt: string | undefined,
): RowChange['private'] {
  const names = Object.keys(fields);
  if (hash === undefined) return names.length === 0 ? 'same' : 'gained';
  if (salt === undefined) return 'unknown';
  const met = subsetsOf(names).find((subset) => {
    const part = Object.fromEntries(subset.map((name) => [name, fields[name] ?? '']));
    return subset.length > 0 && privateHash(part, salt) === hash;
  });
  if (met === undefined) return 'changed';
  return met.length === names.length ? 'same' : 'gained';
}

/** All choices from a few names, none and all included. */
function subsetsOf([name, ...rest]: readonly string[]): readonly (readonly string[])[] {
  if (name === undefined) return [[]];
  return subsetsOf(rest).flatMap((set) => [set, [name, ...set]]);
}

/** Whether a change is nothing but growth: then the next mark publishes the row anew, and the old line stays beside it. */
export function isGrowth({ kind }: FoundRow, change: RowChange): boolean {
  if (!GROWING.has(kind) || change.private === 'changed') return false;
  return change.fields.every(
    ({ field, was, is }) =>
      was === undefined && is !== undefined && factsOfField(kind, field)?.defaults !== true,
  );
}
