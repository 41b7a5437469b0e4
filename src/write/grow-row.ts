import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { checkContent } from '../check/check.ts';
import type { ListKind } from '../model/kinds.ts';
import { type ReadProject, readContent } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import type { RawRecord } from '../read/raw.ts';
import { alone } from './alone.ts';
import { busyProblem } from './busy-problem.ts';
import { commit } from './commit.ts';
import { type Insertion, insert } from './insertion.ts';
import { bytesOf, type Change, hashOf, standingChanges } from './journal.ts';
import { newProblems } from './new-problems.ts';
import { cellInTable, fieldInList } from './put-field.ts';
import { steadily } from './steadily.ts';
import type { WriteOptions, WriteResult } from './write-rows.ts';

/** Fields that a row has none of yet, and the id of the row. */
export interface Growth {
  readonly kind: ListKind;
  readonly fields: Readonly<Record<string, string>>;
}

/**
 * Adds fields to a row that stands already, as a step of a part is written: only text is put in, none is taken out. The file is checked
 * as a whole first, and the change is kept with the additions, so that it can be taken back and is not made twice.
 */
export async function growRow(
  contentDir: string,
  project: string,
  growth: Growth,
  options: WriteOptions,
): Promise<WriteResult> {
  const result = await alone(contentDir, options.by ?? 'adding fields', () =>
    steadily(project, () => growAlone(contentDir, project, growth, options)),
  );
  return 'busy' in result ? { problems: [busyProblem(project, result.busy)] } : result;
}

async function growAlone(
  contentDir: string,
  project: string,
  { kind, fields: { id = '', ...fields } }: Growth,
  { now, by, key }: WriteOptions,
): Promise<WriteResult | 'changed'> {
  const earlier = (await standingChanges(contentDir, project)).find(
    (change) => key !== undefined && change.key === key,
  );
  if (earlier) return { written: earlier.written, warnings: [] };

  const content = await readContent(contentDir, { projects: [project] });
  const raw = content.projects[0] && recordOf(content.projects[0], kind, id);
  if (raw === undefined) return refused(project, `there is no "${id}" in ${kind}`);
  const { file, line } = raw.placeOf(['id']);
  const bytes = (await bytesOf(join(contentDir, file))) ?? new Uint8Array();
  const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
  const insertions: Insertion[] = [];
  for (const [name, value] of Object.entries(fields)) {
    const held = heldIn(raw, name);
    if (held === value) continue;
    if (held) return refused(file, `${name}: "${id}" has "${held}" there already`, line);
    const put = (file.endsWith('.csv') ? cellInTable : fieldInList)(text, id, name, value);
    if (put === undefined)
      return refused(file, `"${id}" has no room for "${name}"; write it in the file`, line);
    insertions.push(...put);
  }
  const row = { file, line, text: Object.values(fields).join(' '), kind, id };
  if (insertions.length === 0) return { written: [row], warnings: [] };

  const after = new TextEncoder().encode(
    insert(
      text,
      insertions.toSorted((a, b) => a.at - b.at),
    ),
  );
  const checked = await readContent(contentDir, {
    projects: [project],
    instead: new Map([[file, after]]),
  });
  const problems = newProblems(checkContent(content, now), checkContent(checked, now));
  const errors = problems.filter(({ level }) => level === 'error');
  if (errors.length > 0) return { problems: errors };
  const grown = checked.projects[0] && recordOf(checked.projects[0], kind, id);
  const asMeant = Object.entries(fields).every(
    ([name, value]) => grown && heldIn(grown, name) === value,
  );
  if (!asMeant) return refused(file, `"${id}" would not be read as it was given`, line);
  const change: Change = {
    id: randomUUID(),
    at: now.toISOString(),
    project,
    by,
    key,
    written: [row],
    files: [{ file, before: hashOf(bytes), after: hashOf(after), insertions }],
  };
  const made = await commit(contentDir, change, new Map([[file, after]]));
  return made === 'made' ? { written: [row], warnings: problems } : made;
}

function recordOf(project: ReadProject, kind: ListKind, id: string): RawRecord | undefined {
  return project.lists[kind].find(({ value }) => value.id === id)?.raw;
}

function heldIn({ value }: RawRecord, name: string): string | undefined {
  const held = (value as Readonly<Record<string, unknown>>)[name];
  return typeof held === 'string' && held !== '' ? held : undefined;
}

function refused(file: string, message: string, line = 1): { problems: readonly Problem[] } {
  return { problems: [problemAt({ file, line, column: 1 }, 'write/grow', message)] };
}
