import { makeProject } from '../../src/book/project.ts';
import type { Project } from '../../src/book/types.ts';
import { type ListKind, listKinds, singleKinds } from '../../src/model/kinds.ts';
import type { ReadEntry, ReadProject } from '../../src/read/content.ts';
import { PlaceMap, type RawRecord, type RawValue } from '../../src/read/raw.ts';
import { type Understood, understand } from '../../src/read/understand.ts';

/** A record as a file says it: every value is text, a list or a group. */
export type Written = Readonly<Record<string, RawValue>>;

/** What a test says of a project; what it leaves out is as in the small workshop below. */
export interface WrittenProject {
  readonly project?: Written;
  readonly lists?: Partial<Readonly<Record<ListKind, readonly Written[]>>>;
  readonly entries?: readonly Written[];
}

const workshop: Written = {
  name: 'A drill press',
  summary: 'A drill press, taken apart and put together again.',
  machine: { maker: 'Hallin', model: '3', year: '1958', kind: 'drill press' },
  currency: 'GBP',
  timeZone: 'Europe/London',
  work: ['cleaning', 'fitting'],
  people: [{ id: 'ada', name: 'Ada Venn' }, { id: 'helper' }],
};

/** Makes a project of the book from records, by the reading and the making that a content folder goes through; no file is read. */
export function projectOf({ project, lists = {}, entries = [] }: WrittenProject): Project {
  const listOf = (kind: ListKind) =>
    (lists[kind] ?? []).map((record) => understood(record, listKinds[kind], kind));
  const read = {
    id: 'drill-press',
    info: understood({ ...workshop, ...project }, singleKinds.project, 'project'),
    lists: Object.fromEntries(
      Object.keys(listKinds).map((kind) => [kind, listOf(kind as ListKind)]),
    ),
    entries: entries.map(entryOf),
    photos: [],
    marks: { receipts: [], hashes: new Map() },
    imports: [],
    lost: { ids: new Map(), kinds: new Set<string>(), photoFiles: [] },
    // The lists have the types of their schemas, which the loop over their kinds can't say.
  } as unknown as ReadProject;
  const made = makeProject(read, { drafts: false });
  if (made === undefined) throw new Error('the project could not be made');
  return made;
}

function entryOf(record: Written): ReadEntry {
  const { value, raw } = understood(record, singleKinds.entry, 'entry');
  const slug = `${value.date}-${value.title.toLowerCase().replaceAll(' ', '-')}`;
  const body = { components: [], links: [], words: 0 };
  return { value, raw, slug, file: `drill-press/entries/${slug}.mdx`, body };
}

function understood<Schema extends Parameters<typeof understand>[1]>(
  record: Written,
  schema: Schema,
  kind: string,
): Understood<Extract<ReturnType<typeof understand<Schema>>, { value: unknown }>['value']> {
  const raw: RawRecord = new PlaceMap(kind).record(record, []);
  const result = understand(raw, schema, kind);
  if (Array.isArray(result)) throw new Error(result.map(({ message }) => message).join('; '));
  return result;
}
