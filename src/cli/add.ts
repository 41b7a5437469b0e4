import { todayOf } from '../check/check.ts';
import type { ListKind } from '../model/kinds.ts';
import { type ReadContent, type ReadProject, readContent } from '../read/content.ts';
import { contentDir, contentDirProblem } from '../site/folders.ts';
import type { Fields } from '../write/csv-append.ts';
import { changesOf } from '../write/journal.ts';
import { alsoCarried, readyRow } from '../write/ready-row.ts';
import { type WriteOptions, type WriteResult, writeRows } from '../write/write-rows.ts';
import { type AddArguments, HELP, readAddArguments, singular } from './add-arguments.ts';
import { completionScript, printCandidates } from './add-completion.ts';
import { askFields, confirm, isInteractive } from './ask-fields.ts';
import { noProject } from './no-project.ts';
import { describeProblems } from './print-problems.ts';
import { say } from './say.ts';
import { main as undo } from './undo.ts';

/** Adds a row to a ledger: from words and fields, from last time, or asked step by step. */
export async function main(args: readonly string[]): Promise<number> {
  if (args[0] === '--candidates') return printCandidates(args.slice(1));
  const asked = readAddArguments(args);
  if ('say' in asked) return say(asked.say, asked.status);
  if (asked.completion !== undefined) return completionScript(asked.completion);
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);
  if (asked.undo) return undo(asked.project === undefined ? [] : [asked.project]);
  if (asked.kind === undefined) return say(HELP, 2);
  const content = await readContent(contentDir);
  const project = await projectFor(content, asked.project);
  if (typeof project === 'string') return say(project, 2);
  return addTo(project, asked.kind, asked);
}

async function addTo(project: ReadProject, kind: ListKind, asked: AddArguments): Promise<number> {
  const now = new Date();
  const today = todayOf(project, now);
  const first = readyRow(project, kind, { ...asked, today });
  if (first.left.length > 0)
    return say(`No field of ${kind} takes ${first.left.map((word) => `"${word}"`).join(', ')}.`, 2);
  const step = isInteractive() && (first.missing.length > 0 || nothingGiven(asked));
  if (!step && first.missing.length > 0)
    return say(`Not written: ${first.missing.map((name) => `--${name}`).join(', ')} missing.`, 1);
  const typed = step ? await askFields(project, kind, first, nothingGiven(asked)) : first.fields;
  if (typed === undefined) return say('Nothing was written.', 1);

  const shows = asked.dry || (!asked.yes && isInteractive());
  const carry = step ? [] : first.carried;
  const row = { kind, fields: typed };
  const tried = await tryRow(project, row, { now, dry: shows, by: `add ${singular(kind)}` });
  if ('problems' in tried.result) return refuse(tried.result);
  show(tried.result, [...carry, ...tried.also]);
  if (asked.dry) return say('Nothing was written.', 0);
  if (!shows) return written(tried.result);
  if (!(await confirm('Write it?'))) return say('Nothing was written.', 1);
  const result = await tryRow(project, { kind, fields: tried.fields }, { now, by: 'add' });
  return 'problems' in result.result ? refuse(result.result) : written(result.result);
}

type Done = Exclude<WriteResult, { problems: unknown }>;

function show({ written: [row], warnings }: Done, over: readonly string[]): void {
  console.log(`${row?.file}:${row?.line}\n\n${row?.text}\n`);
  if (over.length > 0) console.log(`From last time: ${over.join(', ')}.`);
  if (warnings.length > 0) console.log(describeProblems(warnings, contentDir));
}

function written({ written: [row] }: Done): number {
  return say(`Written as ${row?.id}. Take it back with: npm run undo`, 0);
}

/** Writes a row, or tries to; what the check misses and the last row had is taken over. */
async function tryRow(
  project: ReadProject,
  { kind, fields }: { readonly kind: ListKind; readonly fields: Fields },
  options: WriteOptions,
) {
  const once = (some: Fields) =>
    writeRows(contentDir, project.id, [{ kind, fields: some }], options);
  const result = await once(fields);
  const more = 'problems' in result ? alsoCarried(project, kind, fields, result.problems) : {};
  const also = Object.keys(more);
  if (also.length === 0) return { result, fields, also };
  const whole = { ...fields, ...more };
  return { result: await once(whole), fields: whole, also };
}

function nothingGiven({ words, fields }: AddArguments): boolean {
  return words.length === 0 && Object.keys(fields).length === 0;
}

function refuse(result: Extract<WriteResult, { problems: unknown }>): number {
  console.error(describeProblems(result.problems, contentDir));
  return say('Nothing was written.', 1);
}

/** The project that is meant: the one that is named, the only one, or the one that was added to last. */
export async function projectFor(
  { projects }: ReadContent,
  wanted: string | undefined,
): Promise<ReadProject | string> {
  const ids = projects.map(({ id }) => id);
  const last = (await changesOf(contentDir)).findLast(({ project }) => ids.includes(project));
  const id = wanted ?? (ids.length === 1 ? ids[0] : last?.project);
  const found = projects.find((project) => project.id === id);
  if (found) return found;
  if (ids.length === 0) return 'There is no project yet: npm run new -- project';
  if (wanted === undefined)
    return `Say which project: ${ids.map((name) => `--project ${name}`).join(', or ')}`;
  return noProject(wanted, ids);
}
