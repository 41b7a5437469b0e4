import { parseArgs } from 'node:util';
import { openBook } from '../book/open.ts';
import { checkContent } from '../check/check.ts';
import { photoProblems } from '../photo/check.ts';
import { readContent } from '../read/content.ts';
import { type Problem, sortProblems } from '../read/problem.ts';
import { cacheDir, contentDir, contentDirProblem } from '../site/folders.ts';
import { checkAddresses } from './address-check.ts';
import { countProblems, describeProblems, plural, problemsAsJson } from './print-problems.ts';

const HELP = `npm run check [-- --format text|json]

Reads the content folder and reports every problem; writes nothing.
Exit status: 0 no problem, 1 problems, 2 wrong use.
`;

/** Reads and reports. Warnings alone leave the exit status at 0. */
export async function main(args: readonly string[]): Promise<number> {
  const format = readFormat(args);
  if (format === 'help') return say(HELP, 0);
  if (format === undefined) return say(HELP, 2);
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);

  const content = await readContent(contentDir);
  const found = checkContent(content, new Date());
  const open = () => openBook(contentDir, { now: new Date() });
  const problems = sortProblems([
    ...found,
    ...(await photoProblems(content, contentDir, cacheDir)),
    ...(found.some(isError) ? [] : await checkAddresses(contentDir, content.site?.value, open)),
  ]);
  const failed = problems.some(isError);
  if (format === 'json') return say(problemsAsJson(problems), failed ? 1 : 0);

  const entries = content.projects.reduce((count, project) => count + project.entries.length, 0);
  const rows = content.projects.reduce(
    (count, { lists }) => count + Object.values(lists).flat().length,
    0,
  );
  if (problems.length > 0) console.log(describeProblems(problems, contentDir));
  const read = `${plural(content.projects.length, 'project')}, ${plural(entries, 'entry', 'entries')}, ${plural(rows, 'record')} read`;
  return say(`${read}: ${countProblems(problems)}.`, failed ? 1 : 0);
}

const isError = ({ level }: Problem) => level === 'error';

function readFormat(args: readonly string[]): 'text' | 'json' | 'help' | undefined {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        format: { type: 'string', default: 'text' },
        help: { type: 'boolean', short: 'h' },
      },
    });
    if (values.help) return 'help';
    return values.format === 'text' || values.format === 'json' ? values.format : undefined;
  } catch {
    return undefined;
  }
}

function say(text: string, status: number): number {
  if (status === 2) console.error(text);
  else console.log(text);
  return status;
}
