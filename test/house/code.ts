import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';

/** Text of each code file by its path from the project's folder, written with slashes. */
export type Code = ReadonlyMap<string, string>;

/** One import of a file. */
export interface Import {
  /** A path from the project's folder where it leads to a file of ours, else the name as it is written. */
  readonly to: string;
  readonly written: string;
  /** Whether nothing of it is left when the program runs. */
  readonly typeOnly: boolean;
}

const CODE = /\.(ts|js|mjs|astro)$/;
const WRITTEN = /\.(ts|js|mjs|astro|css|html|py)$/;

/** The code under these folders. */
export const readCode = (...folders: readonly string[]): Code => readAll(folders, CODE);

/** Everything under these folders that is written by hand: code, style sheets, pages. */
export const readTexts = (...folders: readonly string[]): Code => readAll(folders, WRITTEN);

function readAll(folders: readonly string[], ending: RegExp): Code {
  const files = folders.flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => ending.test(name))
      .map((name) => join(folder, name)),
  );
  return new Map(files.map((file) => [file.replaceAll('\\', '/'), readFileSync(file, 'utf8')]));
}

const FROM = /\b(?:import|export)\s+(type\s+)?(?:([\w*{}\s,$]+?)\s+from\s+)?'([^']+)'/g;
const CALLED = /\bimport\(\s*'([^']+)'/g;

/** What a file imports, in the order of its text. Formatting is fixed, so that import lines are known by how they look. */
export function importsOf(file: string, text: string): Import[] {
  const named = [...text.matchAll(FROM)].map(([, type, names, name = '']) => ({
    to: resolved(file, name),
    written: name,
    typeOnly: type !== undefined || onlyTypes(names ?? ''),
  }));
  const called = [...text.matchAll(CALLED)].map(([, name = '']) => ({
    to: resolved(file, name),
    written: name,
    typeOnly: false,
  }));
  return [...named, ...called];
}

function resolved(file: string, name: string): string {
  if (!name.startsWith('.')) return name;
  return posix.join(posix.dirname(file), name.replace(/\?\w+$/, ''));
}

function onlyTypes(names: string): boolean {
  const inner = /^\{([^}]*)\}$/.exec(names.trim())?.[1]?.split(',') ?? [];
  const written = inner.map((name) => name.trim()).filter((name) => name !== '');
  return written.length > 0 && written.every((name) => name.startsWith('type '));
}
