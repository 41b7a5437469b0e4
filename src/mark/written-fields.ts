import { z } from 'zod';
import { factsOf } from '../model/facts.ts';
import { listKinds, type RowKind, rowKinds } from '../model/kinds.ts';
import type { RawRecord, RawValue } from '../read/raw.ts';
import type { Day } from '../time/day.ts';
import type { RowFields, RowValue } from '../trust/row-hash.ts';

/** The fields of a row as they were typed: those that are published, and those that stay at home. */
export interface WrittenFields {
  readonly public: RowFields;
  readonly private: RowFields;
}

/** What the mark has to know of a field. */
interface FieldFacts {
  readonly list: boolean;
  readonly private: boolean;
  readonly day: boolean;
  /** Whether it means something when it is left out, so that writing it later changes the row. */
  readonly defaults: boolean;
}

const facts = new Map<RowKind, ReadonlyMap<string, FieldFacts>>(
  rowKinds.map((kind) => {
    const fields = Object.entries(listKinds[kind].shape) as [string, z.ZodType][];
    return [kind, new Map(fields.map(([name, schema]) => [name, fieldFacts(schema)]))];
  }),
);

function fieldFacts(schema: z.ZodType): FieldFacts {
  const { item, editor, private: isPrivate } = factsOf(schema);
  return {
    list: item !== undefined,
    private: isPrivate === true,
    day: editor?.['format'] === 'date',
    defaults: schema instanceof z.ZodDefault,
  };
}

/** What a field of a kind of row is; undefined for a name that is none. */
export function factsOfField(kind: RowKind, name: string): FieldFacts | undefined {
  return facts.get(kind)?.get(name);
}

/** Where the fields of a row are taken from. */
export interface WrittenOptions {
  /** Hashes of the files that rows name, by path inside the project. */
  readonly hashes: ReadonlyMap<string, string>;
  /** Dated steps after this day are left out: on that day they were not yet written. */
  readonly until?: Day | undefined;
}

/**
 * The fields of a row as typed, so that the CSV and the YAML of a row are one: text trimmed, with LF line ends, in Unicode form C;
 * lists as lists, however they were written; empty ones and defaults absent. The id is not among them, it has its own place.
 */
export function writtenFields(
  kind: RowKind,
  { value }: RawRecord,
  { hashes, until }: WrittenOptions,
): WrittenFields {
  const shown: Record<string, RowValue> = {};
  const hidden: Record<string, RowValue> = {};
  const row = value as Readonly<Record<string, RawValue>>;
  const withheld = itemsOf(row['withhold'] ?? '');
  for (const [name, raw] of Object.entries(row)) {
    const fact = factsOfField(kind, name);
    const text = fact?.list ? itemsOf(raw) : textOf(raw);
    if (fact === undefined || name === 'id' || text.length === 0) continue;
    if (fact.day && until !== undefined && String(text) > until) continue;
    const stays = fact.private || withheld.includes(name);
    (stays ? hidden : shown)[name] = text;
  }
  return { public: { ...shown, ...hashesOf(row, hashes) }, private: hidden };
}

/** The hashes of a row's receipt and photo bind the files to the row; the files themselves are not published. */
function hashesOf(
  row: Readonly<Record<string, RawValue>>,
  hashes: ReadonlyMap<string, string>,
): RowFields {
  const receipt = isFileName(row['receipt']) ? hashes.get(`receipts/${row['receipt']}`) : undefined;
  const photo = hashes.get(`photos/${row['photo']}`);
  return {
    ...(receipt && { 'receipt-sha256': receipt }),
    ...(photo && { 'photo-sha256': photo }),
  };
}

/** Whether a receipt is the name of a file and not a number on paper. */
export function isFileName(receipt: unknown): receipt is string {
  return typeof receipt === 'string' && /\.(jpe?g|png|pdf|heic|webp)$/i.test(receipt);
}

function textOf(raw: RawValue): string {
  // A lone half of a surrogate pair, which YAML lets in by an escape, has no bytes to hash.
  return String(raw).replaceAll('\r\n', '\n').trim().normalize('NFC').toWellFormed();
}

function itemsOf(raw: RawValue): readonly string[] {
  if (Array.isArray(raw)) return raw.map(textOf).filter((item) => item !== '');
  return textOf(raw)
    .split(/\s+/)
    .filter((item) => item !== '');
}
