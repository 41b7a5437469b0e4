import type { z } from 'zod';
import {
  type EntryInfo,
  homeKinds,
  type ImportMapping,
  type ListKind,
  listKinds,
  type ProjectInfo,
  type Site,
  singleKinds,
} from '../model/kinds.ts';
import { readCsv } from './csv.ts';
import {
  type Instead,
  type Looking,
  listContent,
  type ProjectFiles,
  type RecordFile,
  readContentFile,
} from './files.ts';
import { cutFrontMatter } from './front-matter.ts';
import type { Lists } from './lists.ts';
import { type MarkFiles, readMarkFiles } from './mark-files.ts';
import { type EntryBody, readMdx } from './mdx.ts';
import { type Problem, problemAt } from './problem.ts';
import type { RawRecord } from './raw.ts';
import { unread } from './refusal.ts';
import { decodeText, decodeTyped } from './text.ts';
import { type Understood, understand } from './understand.ts';
import { type ReadRecords, readYamlList, readYamlRecord } from './yaml.ts';

/** An entry as read: front matter, what its text uses, and where its file is. */
export interface ReadEntry extends Understood<EntryInfo> {
  readonly file: string;
  /** File name without its ending; the address of the entry. */
  readonly slug: string;
  readonly body: EntryBody;
}

/** Everything a project's files say, each record with its place; nothing is checked against anything yet. */
export interface ReadProject {
  readonly id: string;
  readonly info: Understood<ProjectInfo> | undefined;
  readonly lists: Lists;
  readonly entries: readonly ReadEntry[];
  readonly photos: readonly string[];
  /** What earlier marks left in the folder, and hashes of files that rows name. */
  readonly marks: MarkFiles;
  /** How files of other programs are read into rows. */
  readonly imports: readonly Understood<ImportMapping>[];
  /** Records that were seen but not understood: a reference to one of them is no mistake of its own. */
  readonly lost: Lost;
}

/** Ids of records with mistakes, and kinds of which a whole file could not be read. */
export interface Lost {
  readonly ids: ReadonlyMap<string, readonly string[]>;
  readonly kinds: ReadonlySet<string>;
  /** The file that each photo's record with a mistake names, as far as it names one. */
  readonly photoFiles: readonly (string | undefined)[];
}

/** The content folder as read. */
export interface ReadContent {
  readonly site: Understood<Site> | undefined;
  readonly projects: readonly ReadProject[];
  readonly problems: readonly Problem[];
}

/**
 * Reads a content folder into typed records and collects every problem on the way. Nothing is thrown for what a file says.
 * It can be read as it would be with other bytes in some ledger files, so that these are checked before they are written.
 */
export async function readContent(contentDir: string, looking: Looking = {}): Promise<ReadContent> {
  const listed = await listContent(contentDir, looking);
  const problems = [...listed.problems];
  const folder = { contentDir, instead: looking.instead ?? new Map() };
  const linked = problems.some(({ file, code }) => file === 'site.yaml' && code === 'file/link');
  const site = linked ? undefined : await readSite(folder, problems);
  const projects: ReadProject[] = [];
  for (const files of listed.projects) projects.push(await readProject(folder, files, problems));
  return { site, projects, problems };
}

/** Where files are read from. */
interface Folder {
  readonly contentDir: string;
  readonly instead: Instead;
}

async function readText(
  { contentDir, instead }: Folder,
  file: string,
  problems: Problem[],
  decode = decodeText,
): Promise<string | undefined> {
  const bytes = instead.get(file) ?? (await readContentFile(contentDir, file).catch(unread(file)));
  const text = bytes instanceof Uint8Array ? decode(bytes, file) : bytes;
  if (typeof text === 'string') return text;
  problems.push(text);
  return undefined;
}

async function readSite(
  folder: Folder,
  problems: Problem[],
): Promise<Understood<Site> | undefined> {
  try {
    const text = await readText(folder, 'site.yaml', problems);
    return text === undefined
      ? undefined
      : one(readYamlRecord(text, 'site.yaml'), singleKinds.site, 'site', problems);
  } catch (error) {
    if (!['ENOENT', 'ENOTDIR'].includes((error as NodeJS.ErrnoException).code ?? '')) throw error;
    problems.push(
      problemAt(
        { file: 'site.yaml', line: 1, column: 1 },
        'file/missing',
        'there is no site.yaml',
        'write one with title, address, language and builder',
      ),
    );
    return undefined;
  }
}

function one<Schema extends z.ZodObject>(
  read: ReadRecords,
  schema: Schema,
  kind: string,
  problems: Problem[],
) {
  problems.push(...read.problems);
  const raw = read.records[0];
  if (raw === undefined) return undefined;
  const result = understand(raw, schema, kind);
  if (!Array.isArray(result)) return result;
  problems.push(...result);
  return undefined;
}

async function readProject(
  folder: Folder,
  files: ProjectFiles,
  problems: Problem[],
): Promise<ReadProject> {
  let info: Understood<ProjectInfo> | undefined;
  const lists = Object.fromEntries(
    Object.keys(listKinds).map((kind) => [kind, [] as unknown[]]),
  ) as Record<ListKind, unknown[]>;
  const lostIds = new Map<string, string[]>(Object.keys(listKinds).map((kind) => [kind, []]));
  const lostKinds = new Set<string>(files.unread);
  const lostPhotoFiles: (string | undefined)[] = [];
  for (const { kind, file } of files.records) {
    const text = await readText(folder, file, problems);
    const read = text === undefined ? undefined : readRecords(text, { kind, file });
    if (read === undefined || read.problems.length > 0) lostKinds.add(kind);
    if (read === undefined) continue;
    if (kind === 'project') info = one(read, singleKinds.project, 'project', problems);
    else
      for (const record of many(read, kind, problems, (raw) => {
        const id = textAt(raw, 'id');
        if (id !== undefined) lostIds.get(kind)?.push(id);
        if (kind === 'photos') lostPhotoFiles.push(textAt(raw, 'file'));
      }))
        lists[kind].push(record);
  }
  if (info === undefined) for (const kind of ['project', 'work', 'people']) lostKinds.add(kind);
  if (!files.records.some(({ kind }) => kind === 'project')) {
    problems.push(
      problemAt(
        { file: `${files.id}/project.yaml`, line: 1, column: 1 },
        'file/missing',
        `the project "${files.id}" has no project.yaml`,
        'write one with name, summary, machine, timeZone, work and people',
      ),
    );
  }

  const entries: ReadEntry[] = [];
  for (const file of files.entries) {
    const entry = await readEntry(folder, file, problems);
    if (entry) entries.push(entry);
    else lostKinds.add('entries');
  }
  const lost = { ids: lostIds, kinds: lostKinds, photoFiles: lostPhotoFiles };
  return {
    id: files.id,
    info,
    lists: lists as unknown as Lists,
    entries,
    photos: files.photos,
    marks: await readMarkFiles(folder.contentDir, files, lists as unknown as Lists),
    imports: await readImports(folder, files, problems),
    lost,
  };
}

async function readImports(
  folder: Folder,
  { imports: file }: ProjectFiles,
  problems: Problem[],
): Promise<Understood<ImportMapping>[]> {
  const text = file && (await readText(folder, file, problems));
  if (!file || text === undefined) return [];
  const { records, problems: broken } = readYamlList(text, file);
  problems.push(...broken);
  return records.flatMap((raw) => {
    const result = understand(raw, homeKinds.imports, 'mapping');
    if (!Array.isArray(result)) return [result];
    problems.push(...result);
    return [];
  });
}

/** Reads the records of a file, by its ending. */
export function readRecords(text: string, { kind, file }: RecordFile): ReadRecords {
  if (file.endsWith('.csv')) return readCsv(text, file);
  return kind === 'project' ? readYamlRecord(text, file) : readYamlList(text, file);
}

function many(
  read: ReadRecords,
  kind: ListKind,
  problems: Problem[],
  lose: (raw: RawRecord) => void,
): unknown[] {
  for (const problem of read.problems) problems.push(problem);
  const schema: z.ZodObject = listKinds[kind];
  return read.records.flatMap((raw) => {
    const result = understand(raw, schema, `${kind} record`);
    if (!Array.isArray(result)) return [result];
    problems.push(...result);
    lose(raw);
    return [];
  });
}

function textAt({ value }: RawRecord, field: string): string | undefined {
  const found = (value as Readonly<Record<string, unknown>>)[field];
  return typeof found === 'string' ? found : undefined;
}

async function readEntry(
  folder: Folder,
  file: string,
  problems: Problem[],
): Promise<ReadEntry | undefined> {
  const text = await readText(folder, file, problems, decodeTyped);
  if (text === undefined) return undefined;
  // The renderer ends a line there, and nobody else does: what is code for one could be text for the other.
  const lone = /\r(?!\n)/.exec(text);
  if (lone !== null) {
    const before = text.slice(0, lone.index).split('\n');
    const place = { file, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
    const said = 'a carriage return stands where no line ends';
    problems.push(
      problemAt(place, 'entry/line-end', said, 'save the file with line ends of one kind'),
    );
    return undefined;
  }
  const cut = cutFrontMatter(text);
  if (typeof cut !== 'object') {
    problems.push(noFrontMatter(file, cut));
    return undefined;
  }

  const info = one(
    readYamlRecord(cut.frontMatter.normalize('NFC'), file, { lines: 1 }),
    singleKinds.entry,
    'front matter',
    problems,
  );
  const { body, problems: broken } = readMdx(cut.rest, file);
  problems.push(...broken);
  return info && { ...info, file, slug: file.replace(/^.*\//, '').replace(/\.mdx$/, ''), body };
}

function noFrontMatter(file: string, line: number | undefined): Problem {
  if (line === undefined)
    return problemAt(
      { file, line: 1, column: 1 },
      'entry/no-front-matter',
      'the entry has no front matter',
      'start the file with "---", title, date, phase, summary, "---"',
    );
  return problemAt(
    { file, line, column: 1 },
    'entry/front-matter-end',
    'the front matter ends at this line, which is more than "---"',
    'end the front matter with a line "---", and start no other line of it with "---" or "+++"',
  );
}
