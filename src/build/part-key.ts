import { createHash, type Hash } from 'node:crypto';
import type { Dirent } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import type { PhotoManifest } from '../photo/manifest.ts';

/** What of the program decides how pages look, beside package.json. */
const PROGRAM = {
  files: ['package-lock.json', 'astro.config.ts', 'tsconfig.json'],
  folders: ['src', 'components'],
};

/** Folders of a project that count by the names of their files: photos count by what is published of them. */
const BY_NAME = /^(photos|receipts)\//;

/** What is never read. */
const HIDDEN = /(^|\/)\./;

/** All that pages of a project are made from, photos apart, as one hash; and how many bytes it is. */
export interface ProjectState {
  readonly hash: string;
  readonly bytes: number;
}

/** What the content folder and the program are at this moment. */
export interface State {
  readonly projects: ReadonlyMap<string, ProjectState>;
}

let program: Promise<Hash> | undefined;

/** The program that runs, read once. */
async function hashProgram(): Promise<Hash> {
  const hash = createHash('sha256');
  for (const file of PROGRAM.files) await addFile(hash, file, file);
  for (const folder of PROGRAM.folders) await addTree(hash, folder, folder);
  const { node, icu, unicode } = process.versions;
  return hash.update(JSON.stringify([node, icu, unicode, process.platform, process.arch]));
}

/** Names the program that makes pages; the address of the site, which is in `site.yaml`, goes into it. */
export async function programKey(contentDir: string): Promise<string> {
  return (await hashShared(contentDir)).digest('hex').slice(0, 32);
}

/** What all pages are made from, of whichever project. */
async function hashShared(contentDir: string): Promise<Hash> {
  program ??= hashProgram();
  const hash = (await program).copy();
  await addFile(hash, join(contentDir, 'site.yaml'), 'site.yaml');
  return hash;
}

/** Reads every byte that pages are made from. */
export async function stateOf(contentDir: string): Promise<State> {
  const base = await hashShared(contentDir);
  const projects = new Map<string, ProjectState>();
  for (const item of await itemsIn(contentDir)) {
    if (!item.isDirectory() || item.name.startsWith('.')) continue;
    const hash = base.copy();
    const bytes = await addTree(hash, join(contentDir, item.name), item.name);
    projects.set(item.name, { hash: hash.digest('hex'), bytes });
  }
  return { projects };
}

/**
 * Names the pages of a project by all that goes into them: the program, `site.yaml`, the project's files, and its photos as they are
 * published. Two runs with the same name make the same bytes, so that the pages of one can serve the other.
 */
export function partKey(id: string, { hash }: ProjectState, photos: PhotoManifest): string {
  const shown = Object.entries(photos).filter(([key]) => key.startsWith(`${id}/`));
  const sorted = shown.sort(([a], [b]) => (a < b ? -1 : 1));
  return createHash('sha256')
    .update(JSON.stringify([hash, sorted]))
    .digest('hex')
    .slice(0, 32);
}

async function addTree(hash: Hash, folder: string, name: string): Promise<number> {
  let bytes = 0;
  for (const item of await itemsIn(folder, { recursive: true })) {
    const file = join(item.parentPath, item.name);
    const inside = relative(folder, file).split(sep).join('/');
    if (!item.isFile() || HIDDEN.test(inside)) continue;
    if (BY_NAME.test(inside)) hash.update(`${name}/${inside}\n`);
    else bytes += await addFile(hash, file, `${name}/${inside}`);
  }
  return bytes;
}

/** Adds name, length and bytes, so that no two lists of files give the same bytes to the hash. */
async function addFile(hash: Hash, path: string, name: string): Promise<number> {
  const bytes = await readFile(path).catch(() => undefined);
  hash.update(`${name} ${bytes?.length}\n`);
  if (bytes) hash.update(bytes);
  return bytes?.length ?? 0;
}

/** What lies in a folder, in an order that does not depend on the disk. */
async function itemsIn(folder: string, { recursive = false } = {}): Promise<Dirent[]> {
  const items = await readdir(folder, { recursive, withFileTypes: true });
  const path = (item: Dirent) => join(item.parentPath, item.name);
  return items.sort((a, b) => (path(a) < path(b) ? -1 : 1));
}
