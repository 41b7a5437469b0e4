import { readdir, readFile, realpath, stat } from 'node:fs/promises';
import { join, sep } from 'node:path';
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

/** Files as they would be: bytes by path inside the content folder, in place of what is there, or besides. */
export type Instead = ReadonlyMap<string, Uint8Array>;

/** What of a content folder is looked at, and as what. */
export interface Looking {
  readonly instead?: Instead;
  /** The one project that is looked at; all without it. */
  readonly project?: string;
}

/** Lists a content folder, in the order of names so that nothing depends on the disk. */
export async function listContent(
  contentDir: string,
  { instead = new Map(), project }: Looking = {},
): Promise<ContentFiles> {
  const projects: ProjectFiles[] = [];
  const problems: Problem[] = [];
  for (const folder of await listDirectory(contentDir)) {
    if (folder.name.startsWith('.')) continue;
    if (folder.isSymbolicLink() && (await isFolder(join(contentDir, folder.name))))
      problems.push(linked(folder.name, 'the folder is a link, which is not followed'));
    if (!folder.isDirectory()) continue;
    if (project !== undefined && folder.name !== project) continue;
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
  const problems: Problem[] = [];
  const records: RecordFile[] = [];
  const unread: string[] = [];
  const folders = await listDirectory(join(contentDir, id));
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
    for (const item of await listFiles(contentDir, `${id}/${folder}`, instead)) {
      const file = `${id}/${folder}${item.name}`;
      const match = /^([a-z]+)(?:-[\w-]+)?\.(yaml|csv)$/.exec(item.name);
      if (
        (!item.isFile && !item.leadsOut) ||
        item.name.startsWith('.') ||
        (folder === '' && KEPT_FILES.has(item.name)) ||
        /\.md$/.test(item.name)
      )
        continue;
      if (item.leadsOut) problems.push(linked(file, `the file ${LEADS_OUT}`));
      else if (match?.[1] === 'project' && file !== `${id}/project.yaml`)
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
  const entries = await listEntries(contentDir, id, problems);
  const photos = await listPhotos(contentDir, id, problems);
  const receipts = await namesIn(join(contentDir, id, 'receipts'));
  const imports = folders.some(({ name }) => name === 'imports.yaml')
    ? `${id}/imports.yaml`
    : undefined;
  return { files: { id, records, unread, entries, photos, receipts, imports }, problems };
}

async function listEntries(contentDir: string, id: string, problems: Problem[]): Promise<string[]> {
  const entries: string[] = [];
  for (const item of await listDirectory(join(contentDir, id, 'entries'))) {
    const file = `${id}/entries/${item.name}`;
    const place = { file, line: 1, column: 1 };
    if (item.name.startsWith('.')) continue;
    if (item.isDirectory()) {
      const message = `the folder "${item.name}" is not read`;
      const fix = 'put its entries into entries/ itself';
      problems.push(problemAt(place, 'file/unknown-folder', message, fix));
    } else if (item.isSymbolicLink() && !(await staysInside(contentDir, file)))
      problems.push(linked(file, `the entry ${LEADS_OUT}`));
    else if (item.name.endsWith('.mdx')) entries.push(file);
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

function stemOf(name: string): string {
  return name.replace(/\..*$/, '').split('-')[0] ?? '';
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
  const found = new Map<string, { isFile: boolean; leadsOut: boolean }>();
  for (const item of await listDirectory(join(contentDir, folder))) {
    const isLink = item.isSymbolicLink() && !item.name.startsWith('.');
    const stays = isLink && (await staysInside(contentDir, `${folder}${item.name}`));
    found.set(item.name, { isFile: item.isFile() || stays, leadsOut: isLink && !stays });
  }
  for (const file of instead.keys()) {
    const name = file.slice(folder.length);
    if (file.startsWith(folder) && !name.includes('/'))
      found.set(name, { isFile: true, leadsOut: false });
  }
  return [...found]
    .map(([name, about]) => ({ name, ...about }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** Whether a link leads to a file that is in the content folder too; one that leads out could lead to anything. */
async function staysInside(contentDir: string, file: string): Promise<boolean> {
  const path = await realpath(join(contentDir, file)).catch(() => undefined);
  const home = await realpath(contentDir);
  return path?.startsWith(`${home}${sep}`) === true && (await stat(path)).isFile();
}

async function isFolder(path: string): Promise<boolean> {
  return stat(path).then(
    (found) => found.isDirectory(),
    () => false,
  );
}

const LEADS_OUT = 'is a link to something that is not in the content folder, which is not followed';

function linked(file: string, message: string): Problem {
  return problemAt({ file, line: 1, column: 1 }, 'file/link', message, 'put the real one there');
}

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
