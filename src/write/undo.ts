import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { checkContent } from '../check/check.ts';
import { readContent } from '../read/content.ts';
import { type Problem, problemAt } from '../read/problem.ts';
import { alone } from './alone.ts';
import { busyProblem } from './busy-problem.ts';
import { commit, type NewBytes } from './commit.ts';
import { takeOut } from './insertion.ts';
import { bytesOf, type Change, type FileStep, hashOf, standingChanges } from './journal.ts';
import { newProblems } from './new-problems.ts';
import { steadily } from './steadily.ts';

/** What was taken back, or why nothing was. */
export type UndoResult = { readonly undone: Change } | { readonly problems: readonly Problem[] };

/** Takes back the last addition that still stands, as long as its files have not been changed since. */
export async function undoLast(
  contentDir: string,
  { now, project }: { readonly now: Date; readonly project?: string | undefined },
): Promise<UndoResult> {
  const place = project ?? '.';
  const result = await alone(contentDir, 'taking back', () =>
    steadily(place, () => undoAlone(contentDir, now, project)),
  );
  return 'busy' in result ? { problems: [busyProblem(place, result.busy)] } : result;
}

async function undoAlone(
  contentDir: string,
  now: Date,
  project: string | undefined,
): Promise<UndoResult | 'changed'> {
  const last = (await standingChanges(contentDir, project)).at(-1);
  const nothing = { file: project ?? '.', line: 1, column: 1 };
  if (last === undefined)
    return { problems: [problemAt(nothing, 'write/undo', 'there is no addition to take back')] };
  const bytes = new Map<string, Uint8Array | undefined>();
  for (const step of last.files) {
    const before = await bytesBefore(contentDir, step);
    if (before === 'changed') return { problems: [changedSince(last, step)] };
    bytes.set(step.file, before);
  }
  const problems = await problemsWithout(contentDir, last.project, bytes, now);
  if (problems.length > 0) return { problems: problems.map((one) => markedOr(one, last)) };
  const files = last.files.map(({ file, before, after }) => ({
    file,
    before: after,
    after: before,
    insertions: [],
  }));
  const change: Change = {
    id: randomUUID(),
    at: now.toISOString(),
    project: last.project,
    undoes: last.id,
    written: [],
    files,
  };
  return (await commit(contentDir, change, bytes)) === 'made' ? { undone: last } : 'changed';
}

/** The bytes before an addition; nothing where there was no file. */
async function bytesBefore(
  contentDir: string,
  { file, before, after, insertions }: FileStep,
): Promise<Uint8Array | undefined | 'changed'> {
  const now = await bytesOf(join(contentDir, file));
  if (hashOf(now) !== after) return 'changed';
  if (before === '') return undefined;
  const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(now);
  const was = takeOut(text, insertions);
  const bytes = was === undefined ? undefined : new TextEncoder().encode(was);
  return hashOf(bytes) === before ? bytes : 'changed';
}

/** What would be wrong without the rows: an entry that shows one, a mark that counts one. */
async function problemsWithout(
  contentDir: string,
  project: string,
  bytes: NewBytes,
  now: Date,
): Promise<Problem[]> {
  const instead = new Map([...bytes].map(([file, part]) => [file, part ?? new Uint8Array()]));
  const is = checkContent(await readContent(contentDir, { projects: [project] }), now);
  const would = checkContent(await readContent(contentDir, { projects: [project], instead }), now);
  return newProblems(is, would).filter(({ level }) => level === 'error');
}

/** A row that is marked is told as one that stays, and not as one that went. */
function markedOr(problem: Problem, { written }: Change): Problem {
  const row = written.find(({ id }) => problem.message.includes(`the row "${id}"`));
  if (problem.code !== 'marks/row-gone' || row === undefined) return problem;
  return problemAt(
    { file: row.file, line: row.line, column: 1 },
    'write/undo',
    `the row "${row.id}" is marked, and stays`,
    `say that it no longer counts: npm run add -- withdrawal ${row.id} "why"`,
  );
}

function changedSince({ written }: Change, { file }: FileStep): Problem {
  const ids = written.filter((row) => row.file === file).map(({ id }) => id);
  const place = { file, line: written.find((row) => row.file === file)?.line ?? 1, column: 1 };
  return problemAt(
    place,
    'write/undo',
    `the file has been changed since ${ids.join(', ')} was added`,
    'remove the row by hand, or let a correction or a withdrawal take its place',
  );
}
