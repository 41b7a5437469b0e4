import { randomUUID } from 'node:crypto';
import { checkContent } from '../check/check.ts';
import type { ListKind } from '../model/kinds.ts';
import { readContent } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import { alone } from './alone.ts';
import { busyProblem } from './busy-problem.ts';
import { commit } from './commit.ts';
import { type Draft, draftFiles } from './draft-files.ts';
import { type Change, hashOf, standingChanges, type Written } from './journal.ts';
import { newProblems } from './new-problems.ts';
import { readBack } from './read-back.ts';
import { steadily } from './steadily.ts';

export type { Written } from './journal.ts';
export { keepFile } from './keep-file.ts';

/** A row to add: the kind of list it belongs to and its fields as text by their names in files. */
export interface NewRow {
  readonly kind: ListKind;
  readonly fields: Readonly<Record<string, string>>;
  /** Path of the file inside the content folder, where the builder's habit is not what is wanted. */
  readonly file?: string;
}

/** What was written, or why nothing was. */
export type WriteResult =
  | { readonly written: readonly Written[]; readonly warnings: readonly Problem[] }
  | { readonly problems: readonly Problem[] };

/** How rows are written. */
export interface WriteOptions {
  readonly now: Date;
  /** Only looks: nothing is written. */
  readonly dry?: boolean;
  /** Who adds, as the journal and a waiting process say it. */
  readonly by?: string;
  /** A name for this addition: asked for a second time, it is not written again. */
  readonly key?: string;
}

/**
 * Adds rows to a project's ledger, all or none: the changed files are read and checked as a whole first, then written anew beside their
 * place and swapped in. A row without an id gets the next free one in the habit of its kind. Only problems that were not there before
 * refuse it.
 */
export async function writeRows(
  contentDir: string,
  project: string,
  rows: readonly NewRow[],
  options: WriteOptions,
): Promise<WriteResult> {
  if (options.dry) {
    const tried = await tryRows(contentDir, project, rows, options.now);
    return 'problems' in tried ? tried : { written: tried.written, warnings: tried.warnings };
  }
  const result = await alone(contentDir, options.by ?? 'adding rows', () =>
    steadily(project, () => writeAlone(contentDir, project, rows, options)),
  );
  return 'busy' in result ? { problems: [busyProblem(project, result.busy)] } : result;
}

async function writeAlone(
  contentDir: string,
  project: string,
  rows: readonly NewRow[],
  { now, by, key }: WriteOptions,
): Promise<WriteResult | 'changed'> {
  const earlier = (await standingChanges(contentDir, project)).find(
    (change) => key !== undefined && change.key === key,
  );
  if (earlier) return { written: earlier.written, warnings: [] };
  const tried = await tryRows(contentDir, project, rows, now);
  if ('problems' in tried) return tried;
  const { drafts, written, warnings } = tried;
  const files = drafts.map(({ file, before, after, insertions }) => ({
    file,
    before: hashOf(before),
    after: hashOf(after),
    insertions,
  }));
  const at = now.toISOString();
  const change: Change = { id: randomUUID(), at, project, by, key, written, files };
  const bytes = new Map(drafts.map(({ file, after }) => [file, after]));
  const made = await commit(contentDir, change, bytes);
  return made === 'made' ? { written, warnings } : made;
}

interface Tried {
  readonly drafts: readonly Draft[];
  readonly written: readonly Written[];
  readonly warnings: readonly Problem[];
}

async function tryRows(
  contentDir: string,
  project: string,
  rows: readonly NewRow[],
  now: Date,
): Promise<Tried | { readonly problems: readonly Problem[] }> {
  const content = await readContent(contentDir, { projects: [project] });
  const [found] = content.projects;
  if (found === undefined) return { problems: [noProject(project), ...content.problems] };
  const drafts = await draftFiles(contentDir, found, rows);
  if (!Array.isArray(drafts)) return { problems: [drafts.problem] };

  const instead = new Map(drafts.map(({ file, after }) => [file, after]));
  const checked = checkContent(
    await readContent(contentDir, { projects: [project], instead }),
    now,
  );
  const problems = newProblems(checkContent(content, now), checked);
  const errors = problems.filter(({ level }) => level === 'error');
  if (errors.length > 0) return { problems: errors };

  const written: { readonly index: number; readonly row: Written }[] = [];
  for (const draft of drafts) {
    const back = readBack({ ...draft, before: draft.before ?? new Uint8Array() });
    if ('problem' in back) return { problems: [back.problem] };
    draft.texts.forEach((text, at) => {
      const { file, kind } = draft;
      const id = draft.rows[at]?.id ?? '';
      const row = { file, kind, id, text, line: back.lines[at] ?? 1 };
      written.push({ index: draft.indices[at] ?? 0, row });
    });
  }
  return {
    drafts,
    written: written.sort((a, b) => a.index - b.index).map(({ row }) => row),
    warnings: problems,
  };
}

function noProject(project: string): Problem {
  const place = { file: project, line: 1, column: 1 };
  return problemAt(place, 'write/project', `there is no project "${project}"`);
}
