import { createHash } from 'node:crypto';
import { z } from 'zod';
import type { ListKind } from '../model/kinds.ts';
import { parseDay } from '../time/day.ts';

/** What each kind of item becomes: the list of its row, the fields a phone may fill, and where its picture goes. */
const KINDS = {
  hours: { list: 'hours', fields: ['date', 'hours', 'phase', 'work', 'who', 'what'] },
  cost: {
    list: 'costs',
    fields: ['date', 'amount', 'category', 'phase', 'parts', 'what', 'supplier'],
    picture: { folder: 'receipts', field: 'receipt' },
  },
  reading: {
    list: 'readings',
    fields: ['date', 'spec', 'state', 'values', 'unit', 'instrument', 'conditions', 'by', 'note'],
    picture: { folder: 'photos', field: 'photo' },
  },
  finding: {
    list: 'findings',
    fields: ['date', 'survey', 'part', 'found', 'place', 'area', 'by', 'note'],
    picture: { folder: 'photos', field: 'photo' },
  },
  part: { list: 'parts', fields: ['id', 'got', 'fitted'] },
} as const satisfies Record<string, KindOfItem>;

interface KindOfItem {
  readonly list: ListKind;
  readonly fields: readonly string[];
  readonly picture?: { readonly folder: 'photos' | 'receipts'; readonly field: string };
}

const itemSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]{20,40}$/),
  project: z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/),
  kind: z.enum(Object.keys(KINDS) as [keyof typeof KINDS, ...(keyof typeof KINDS)[]]),
  fields: z.record(z.string().max(40), z.string().max(4000)),
  picture: z
    .string()
    .regex(/^[a-z0-9]{20,40}$/)
    .optional(),
});

/** Something entered on a phone, under an id that the phone made: sent twice, it is one. */
export type Item = z.output<typeof itemSchema>;

/** Reads what a phone sent; undefined when it is no item, or has a field that its kind does not. */
export function readItem(sent: unknown): Item | undefined {
  const read = itemSchema.safeParse(sent);
  if (!read.success) return undefined;
  const { kind, fields, picture } = read.data;
  const known: KindOfItem = KINDS[kind];
  const fits = Object.keys(fields).every((name) => known.fields.includes(name));
  const mayHavePicture = picture === undefined || known.picture !== undefined;
  return fits && mayHavePicture ? read.data : undefined;
}

/** What an item writes: a new row, or a step that the row of a part grows by. */
export interface RowOfItem {
  readonly kind: ListKind;
  readonly fields: Readonly<Record<string, string>>;
  readonly grows: boolean;
}

/** The row of an item, with the name that its picture gets. Empty fields say nothing and are left out. */
export function rowOf(item: Item): RowOfItem {
  const { list } = KINDS[item.kind];
  const file = fileOf(item);
  const filled = Object.entries(item.fields)
    .map(([name, text]) => [name, text.trim().replace(/\s*\r?\n\s*/g, ' ')] as const)
    .filter(([, text]) => text !== '');
  const fields = Object.fromEntries(filled);
  return {
    kind: list,
    fields: file ? { ...fields, [file.field]: file.name } : fields,
    grows: item.kind === 'part',
  };
}

/** Where a picture goes, and the field that names it. */
export interface PictureFile {
  readonly folder: 'photos' | 'receipts';
  readonly field: string;
  readonly name: string;
}

/** Where an item's picture goes: a name made of day, kind and the picture's own id, so that a second try finds the first one's file. */
export function fileOf(item: Item): PictureFile | undefined {
  const { picture }: KindOfItem = KINDS[item.kind];
  if (item.picture === undefined || picture === undefined) return undefined;
  const day = parseDay(item.fields['date'] ?? '') ?? 'undated';
  return { ...picture, name: `${day}-${item.kind}-${item.picture.slice(0, 12)}.jpg` };
}

/** What an item says, as a hash: the same id with another hash is another item, which may not be. */
export function digestOf({ project, kind, fields, picture }: Item): string {
  const sorted = Object.entries(fields).sort(([a], [b]) => (a < b ? -1 : 1));
  return createHash('sha256')
    .update(JSON.stringify([project, kind, sorted, picture ?? '']))
    .digest('hex');
}
