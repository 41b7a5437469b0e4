import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { makeProject } from '../../src/book/project.ts';
import type { Project } from '../../src/book/types.ts';
import { checkContent } from '../../src/check/check.ts';
import { addressesOf } from '../../src/publish/address.ts';
import { dataFiles } from '../../src/publish/data-files.ts';
import { type ReadContent, readContent } from '../../src/read/content.ts';
import type { Problem } from '../../src/read/problem.ts';
import { everyFigure } from '../book/every-figure.ts';
import { NOON } from '../check/content-folder.ts';
import { everyKind, PHOTO } from './every-kind.ts';

/** Bytes by path inside the content folder. */
export type FileBytes = ReadonlyMap<string, Uint8Array>;

/** What opening a content folder came to. */
export interface Opened {
  readonly content: ReadContent;
  readonly problems: readonly Problem[];
  readonly projects: readonly Project[];
}

export const bytesOf = (text: string) => new TextEncoder().encode(text);

/** The sound files. */
export const soundBytes: FileBytes = new Map(
  Object.entries(everyKind).map(([file, text]) => [file, bytesOf(text)]),
);

/** Makes a folder in which the sound files lie, so that they are listed; they are read from memory. */
export async function soundFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'witnessmark-fuzz-'));
  for (const [file, bytes] of [...soundBytes, [PHOTO, bytesOf('a picture')] as const]) {
    await mkdir(dirname(join(folder, file)), { recursive: true });
    await writeFile(join(folder, file), bytes);
  }
  return folder;
}

export const removeFolder = (folder: string) => rm(folder, { recursive: true, force: true });

/** Does what `openBook` does, with files from memory in place of those that lie in the folder. */
export async function openWith(folder: string, changed: FileBytes): Promise<Opened> {
  const content = await readContent(folder, { instead: new Map([...soundBytes, ...changed]) });
  const problems = checkContent(content, NOON);
  const projects = content.projects.flatMap((read) => makeProject(read, { drafts: false }) ?? []);
  return { content, problems, projects };
}

export const isSound = ({ problems }: Opened) => problems.every(({ level }) => level === 'warning');

/** Works out every figure of a project on its first and last day, and every uncertainty, which is made when somebody asks for it. */
export function workOut(project: Project): number {
  const uncertainties = [...project.values.values()].flat().map(({ U }) => U);
  return everyFigure(project) + uncertainties.length;
}

/** All downloads of a sound folder: what its rows come to. */
export function downloadsOf({ content, projects }: Opened): string[] {
  const site = content.site?.value;
  if (site === undefined) return [];
  const to = addressesOf(site.address);
  return projects.flatMap((project) => {
    const { tables, book } = dataFiles(project, { site, to });
    return [...tables.map(({ text }) => text), book];
  });
}
