import { basename } from 'node:path';
import type { ImportMapping } from '../model/kinds.ts';
import type { ReadContent, ReadProject } from '../read/content.ts';
import { suggest } from '../read/nearest.ts';

/** The project a file goes to, and the mapping it is read by; or why these can't be told. */
export type Found =
  | { readonly project: ReadProject; readonly mapping: ImportMapping | undefined }
  | { readonly wrong: string };

/** What was asked for. */
export interface Wanted {
  readonly file: string;
  readonly project: string | undefined;
  readonly as: string | undefined;
}

/** Finds project and mapping: by name, else by the names of files that mappings give, else the only one there is. */
export function findMapping({ projects }: ReadContent, { file, project: id, as }: Wanted): Found {
  const ids = projects.map((project) => project.id);
  if (id !== undefined && !ids.includes(id))
    return { wrong: `There is no project "${id}". ${suggest(id, ids) ?? ''}`.trimEnd() };
  const asked = projects.filter((project) => id === undefined || project.id === id);
  const all = asked.flatMap((project) =>
    project.imports.map(({ value }) => ({ project, mapping: value })),
  );
  if (as !== undefined && !all.some(({ mapping }) => mapping.id === as)) {
    const names = all.map(({ mapping }) => mapping.id);
    return { wrong: `There is no mapping "${as}". ${suggest(as, names) ?? ''}`.trimEnd() };
  }
  const fitting = all.filter(({ mapping }) =>
    as === undefined ? isNamed(mapping, basename(file)) : mapping.id === as,
  );
  const [found, ...others] = fitting;
  if (found && others.length === 0) return found;
  if (found) {
    const names = fitting.map(
      ({ project, mapping }) => `--project ${project.id} --as ${mapping.id}`,
    );
    return { wrong: `${basename(file)} fits several mappings:\n${names.join('\n')}` };
  }
  const [only] = asked;
  if (only && asked.length === 1) return { project: only, mapping: undefined };
  return { wrong: `Say which project it is for: --project ${ids.join(' | ')}` };
}

/** Whether the name of a file, or of the refused lines of it, is one that a mapping reads. */
function isNamed({ files }: ImportMapping, name: string): boolean {
  if (files === undefined) return false;
  const own = name.replace(/\.refused(-\d+)?\.(csv|ics)$/i, '');
  return [name, own].some((one) => fitsPattern(one.toLowerCase(), files.toLowerCase()));
}

/** Whether a name is one of a pattern with `*` for any characters. Each piece is looked for once, so that no pattern takes long. */
function fitsPattern(name: string, pattern: string): boolean {
  const [start = '', ...rest] = pattern.split('*');
  const end = rest.pop();
  if (end === undefined) return name === pattern;
  if (!name.startsWith(start)) return false;
  let at = start.length;
  for (const piece of rest) {
    const found = name.indexOf(piece, at);
    if (found === -1) return false;
    at = found + piece.length;
  }
  return name.length - end.length >= at && name.endsWith(end);
}
