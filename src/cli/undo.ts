import { join } from 'node:path';
import { takeBackLines } from '../import/take-back.ts';
import { readContent } from '../read/content.ts';
import { contentDir, contentDirProblem } from '../site/folders.ts';
import { alone } from '../write/alone.ts';
import { standingChanges } from '../write/journal.ts';
import { type UndoResult, undoLast } from '../write/undo.ts';
import { noProject } from './no-project.ts';
import { describeProblems } from './print-problems.ts';
import { say } from './say.ts';

const HELP = `npm run undo [-- project]

Takes the last addition of rows back (npm run add, an import, the bench page), as long as its files have not been changed since. Run again,
it takes back the one before. Pictures and entries are files of their own: remove those by hand.
Exit status: 0 taken back, 1 nothing to take back or refused, 2 wrong use.
`;

/** Takes the last addition back and shows its rows. */
export async function main(args: readonly string[]): Promise<number> {
  if (args.includes('--help') || args.includes('-h')) {
    console.log(HELP);
    return 0;
  }
  const [project, ...more] = args;
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);
  if (project?.startsWith('-')) return say(`There is no option ${project}.\n\n${HELP}`, 2);
  if (more.length > 0) return say(`"${more[0]}" is one word too many.\n\n${HELP}`, 2);
  const unknown = project && (await unknownProject(project));
  if (unknown) return say(unknown, 2);
  const result = await alone(contentDir, 'taking back', () => takeBack(project));
  if ('busy' in result) return say(`${result.busy}\nNothing was taken back.`, 1);
  if ('problems' in result)
    return say(`${describeProblems(result.problems, contentDir)}\nNothing was taken back.`, 1);
  for (const { file, text } of result.undone.written) console.log(`${file}\n\n${text}\n`);
  console.log('Taken back.');
  return 0;
}

/** The rows, and what the list of imports says of them. */
async function takeBack(project: string | undefined): Promise<UndoResult> {
  const undo = () => undoLast(contentDir, { now: new Date(), project });
  const last = (await standingChanges(contentDir, project)).at(-1);
  if (last === undefined) return undo();
  const ids = new Set(last.written.map(({ id }) => id));
  return takeBackLines(join(contentDir, last.project), ids, undo, (result) => 'undone' in result);
}

async function unknownProject(project: string): Promise<string | undefined> {
  const ids = (await readContent(contentDir)).projects.map(({ id }) => id);
  return ids.includes(project) ? undefined : noProject(project, ids);
}
