import type { Dirent } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type ListKind, listKinds } from '../model/kinds.ts';
import { nearest, suggest } from './nearest.ts';
import { type Problem, problemAt } from './problem.ts';

/** A file that holds records of one kind. */
export interface RecordFile {
  readonly kind: ListKind | 'project';
  /** Path inside the content folder, with `/`; it is what problems name. */
  readonly file: string;
}

/** What one project's folder holds. */
export interface ProjectFiles {
  readonly id: string;
  readonly records: readonly RecordFile[];
  /** Kinds of which a file lies there under a name that is not read. */
  readonly unread: readonly string[];
  readonly entries: readonly string[];
  /** Names of all files in `photos/`. */
  readonly photos: readonly string[];
  /** Names of all files in `receipts/`. */
  readonly receipts: readonly string[];
  /** Where it says how files of other programs are read, when it does. */
  readonly imports: string | undefined;
}

/** What the content folder holds. */
export interface ContentFiles {
  readonly projects: readonly ProjectFiles[];
  readonly problems: readonly Problem[];
}

const KINDS = [...Object.keys(listKinds), 'project'];
const PLAIN_FOLDERS = new Set(['ledger', 'entries', 'photos', 'receipts']);
/** What commands keep in a project's folder: marks, read by `mark-files.ts`, and what was imported and how. */
const KEPT_FILES = new Set([
  'marks.txt',
  'marked-rows.jsonl',
  'marks-secret.txt',
  'imports.yaml',
  'imported.txt',
]);

/** Folders that the site has besides those of projects. */
export const TAKEN: ReadonlySet<string> = new Set([
  ...['assets', 'cards', 'feed', 'find', 'method', 'photos', 'search'],
]);

/** Files as they would be: bytes by path inside the content folder, in place of what is there, or besides. */
export type Instead = ReadonlyMap<string, Uint8Array>;

/** What of a content folder is looked at, and as what. */
export interface Looking {
  readonly instead?: Instead;
  /** The projects that are looked at; all without it. */
  readonly projects?: readonly string[];
}

/** Lists a content folder, in the order of names so that nothing depends on the disk. */
export async function listContent(
  contentDir: string,
  { instead = new Map(), projects: wanted }: Looking = {},
): Promise<ContentFiles> {
  const projects: ProjectFiles[] = [];
  const problems: Problem[] = [];
  const items = await listDirectory(contentDir);
  problems.push(...linkProblems(items, ''));
  for (const folder of items) {
    if (!folder.isDirectory() || folder.name.startsWith('.')) continue;
    if (wanted && !wanted.includes(folder.name)) continue;
    const listed = await listProject(contentDir, folder.name, instead);
    problems.push(...listed.problems);
    if (listed.files) projects.push(listed.files);
  }
  return { projects, problems };
}

async function listProject(
  contentDir: string,
  id: string,
  instead: Instead,
): Promise<{ files?: ProjectFiles; problems: Problem[] }> {
  const place = { file: id, line: 1, column: 1 };
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id)) {
    return {
      problems: [
        problemAt(
          place,
          'file/project-name',
          `the folder "${id}" can't be part of an address`,
          'use lower-case letters, digits and hyphens',
        ),
      ],
    };
  }
  if (TAKEN.has(id)) {
    return {
      problems: [
        problemAt(
          place,
          'file/project-name',
          `the folder "${id}" would have an address that the site uses itself`,
          `give it another name, like "my-${id}"`,
        ),
      ],
    };
  }
  const problems: Problem[] = [];
  const records: RecordFile[] = [];
  const unread: string[] = [];
  const folders = await listDirectory(join(contentDir, id));
  const linked = new Set(folders.filter((item) => item.isSymbolicLink()).map(({ name }) => name));
  problems.push(...linkProblems(folders, `${id}/`));
  for (const item of folders) {
    if (item.isDirectory() && !PLAIN_FOLDERS.has(item.name) && !item.name.startsWith('.')) {
      problems.push(
        problemAt(
          { ...place, file: `${id}/${item.name}` },
          'file/unknown-folder',
          `the folder "${item.name}" is not read`,
          suggest(item.name, [...PLAIN_FOLDERS]),
        ),
      );
    }
  }

  for (const folder of ['', 'ledger/']) {
    if (folder !== '' && linked.has('ledger')) continue;
    if (folder !== '')
      problems.push(
        ...linkProblems(await listDirectory(join(contentDir, id, folder)), `${id}/${folder}`),
      );
    for (const item of await listFiles(contentDir, `${id}/${folder}`, instead)) {
      const file = `${id}/${folder}${item.name}`;
      const match = /^([a-z]+)(?:-[\w-]+)?\.(yaml|csv)$/.exec(item.name);
      if (
        !item.isFile ||
        item.name.startsWith('.') ||
        (folder === '' && KEPT_FILES.has(item.name)) ||
        /\.md$/.test(item.name)
      )
        continue;
      if (match?.[1] === 'project' && file !== `${id}/project.yaml`)
        problems.push(
          problemAt(
            { file, line: 1, column: 1 },
            'file/unknown',
            'a project has one record of its own, in project.yaml of its folder',
            `move it to ${id}/project.yaml`,
          ),
        );
      else if (match?.[1] && KINDS.includes(match[1]))
        records.push({ kind: match[1] as RecordFile['kind'], file });
      else {
        unread.push(nearest(stemOf(item.name), KINDS) ?? '');
        problems.push(
          problemAt(
            { file, line: 1, column: 1 },
            'file/unknown',
            `"${item.name}" is no file of a project`,
            fileHint(item.name),
          ),
        );
      }
    }
  }
  const entries = linked.has('entries') ? [] : await listEntries(contentDir, id, problems);
  const photos = linked.has('photos') ? [] : await listPhotos(contentDir, id, problems);
  const receipts = linked.has('receipts') ? [] : await namesIn(join(contentDir, id, 'receipts'));
  const imports = folders.some((item) => item.name === 'imports.yaml' && item.isFile())
    ? `${id}/imports.yaml`
    : undefined;
  return { files: { id, records, unread, entries, photos, receipts, imports }, problems };
}

async function listEntries(contentDir: string, id: string, problems: Problem[]): Promise<string[]> {
  const entries: string[] = [];
  const items = await listDirectory(join(contentDir, id, 'entries'));
  problems.push(...linkProblems(items, `${id}/entries/`));
  for (const item of items.filter((one) => !one.isSymbolicLink())) {
    const file = `${id}/entries/${item.name}`;
    const place = { file, line: 1, column: 1 };
    if (item.name.startsWith('.')) continue;
    if (item.isDirectory()) {
      const message = `the folder "${item.name}" is not read`;
      const fix = 'put its entries into entries/ itself';
      problems.push(problemAt(place, 'file/unknown-folder', message, fix));
    } else if (item.name.endsWith('.mdx') && item.isFile()) entries.push(file);
    else {
      const fix = `name it "${item.name.replace(/\.[^.]*$/, '')}.mdx", or move it elsewhere`;
      problems.push(problemAt(place, 'file/unknown', `"${item.name}" is no entry`, fix));
    }
  }
  return entries;
}

/** Names of photos. A link could lead out of the folder to anything, so that it is said and not followed. */
async function listPhotos(contentDir: string, id: string, problems: Problem[]): Promise<string[]> {
  const items = await listDirectory(join(contentDir, id, 'photos'));
  for (const { name } of items.filter((item) => item.isSymbolicLink()))
    problems.push(
      problemAt(
        { file: `${id}/photos/${name}`, line: 1, column: 1 },
        'photo/link',
        'the photo is a link to a file elsewhere, which is not followed',
        'put the file itself there',
      ),
    );
  return items.filter((item) => item.isFile() || item.isSymbolicLink()).map(({ name }) => name);
}

/** A link could lead out of the content folder, to something that nobody means to publish. */
function linkProblems(items: readonly Dirent[], folder: string): Problem[] {
  return items
    .filter((item) => item.isSymbolicLink() && !item.name.startsWith('.'))
    .map(({ name }) =>
      problemAt(
        { file: `${folder}${name}`, line: 1, column: 1 },
        'file/link',
        `"${name}" is a link to somewhere else, which is not followed`,
        'put the file or folder itself there',
      ),
    );
}

function stemOf(name: string): string {
  return name.replace(/\.[\s\S]*$/, '').split('-')[0] ?? '';
}

function fileHint(name: string): string {
  const stem = stemOf(name);
  const ending = name.replace(/^[^.]*/, '');
  if (KINDS.includes(stem))
    return ending === '.yml'
      ? `name it "${name.replace(/yml$/, 'yaml')}"`
      : 'save it as .yaml or .csv';
  return suggest(stem, KINDS) ?? `the name starts with one of: ${KINDS.join(', ')}`;
}

async function namesIn(folder: string): Promise<string[]> {
  const items = await listDirectory(folder);
  return items.filter((item) => item.isFile()).map(({ name }) => name);
}

/** What lies in a folder, with the files that would be there besides. */
async function listFiles(contentDir: string, folder: string, instead: Instead) {
  const items = await listDirectory(join(contentDir, folder));
  const names = new Map(items.map((item) => [item.name, item.isFile()]));
  for (const file of instead.keys()) {
    const name = file.slice(folder.length);
    if (file.startsWith(folder) && !name.includes('/')) names.set(name, true);
  }
  return [...names]
    .map(([name, isFile]) => ({ name, isFile }))
    .sort((a, b) => (orderOf(a.name) < orderOf(b.name) ? -1 : 1));
}

/** Grades and phases mean something by their order, so `grades.yaml` is read before the `grades-more.yaml` that goes on from it. */
const orderOf = (name: string) => name.replace('.', '\0');

async function listDirectory(path: string) {
  try {
    const items = await readdir(path, { withFileTypes: true });
    return items.sort((a, b) => (a.name < b.name ? -1 : 1));
  } catch (error) {
    if (['ENOENT', 'ENOTDIR'].includes((error as NodeJS.ErrnoException).code ?? '')) return [];
    throw error;
  }
}

/** Reads a file of the content folder. */
export async function readContentFile(contentDir: string, file: string): Promise<Uint8Array> {
  return readFile(join(contentDir, file));
}
