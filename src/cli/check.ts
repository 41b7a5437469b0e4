import { parseArgs } from 'node:util';
import { openBook } from '../book/open.ts';
import { checkContent } from '../check/check.ts';
import { photoProblems } from '../photo/check.ts';
import { readContent } from '../read/content.ts';
import { type Problem, sortProblems } from '../read/problem.ts';
import { cacheDir, contentDir, contentDirProblem } from '../site/folders.ts';
import { checkAddresses } from './address-check.ts';
import { fix } from './fix.ts';
import { countProblems, describeProblems, plural, problemsAsJson } from './print-problems.ts';
import { tellWrongUse } from './wrong-use.ts';

const HELP = `npm run check [-- --format text|json]
npm run check -- --fix [--dry-run]

Reads the content folder and reports every problem; writes nothing.
  --fix      first mends what has one answer: dates, ids and words with a typo, spelling of units.
             Each change is shown; marked rows, and all that could mean two things, are left to you.
  --dry-run  with --fix: shows the changes and writes nothing.
Exit status: 0 no problem, 1 problems, 2 wrong use.
`;

/** Reads and reports, and mends first if asked to. Warnings alone leave the exit status at 0. */
export async function main(args: readonly string[]): Promise<number> {
  const wanted = readArguments(args);
  if (wanted === 'help') return say(HELP, 0);
  if (wanted === undefined) return say(HELP, 2);
  const noDir = contentDirProblem();
  if (noDir) return say(noDir, 2);
  if (wanted.fix) console.log(await fix({ dry: wanted.dry }));
  return report(wanted.format);
}

async function report(format: Wanted['format']): Promise<number> {
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

interface Wanted {
  readonly format: 'text' | 'json';
  readonly fix: boolean;
  readonly dry: boolean;
}

function readArguments(args: readonly string[]): Wanted | 'help' | undefined {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        format: { type: 'string', default: 'text' },
        fix: { type: 'boolean', default: false },
        'dry-run': { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h' },
      },
    });
    const { format, fix: mends, 'dry-run': dry, help } = values;
    if (help) return 'help';
    if (format !== 'text' && format !== 'json')
      throw new Error(`--format is text or json, and not "${format}".`);
    if (dry && !mends) throw new Error('--dry-run goes with --fix.');
    // What is mended is told in words, which would spoil the JSON.
    if (mends && format === 'json') throw new Error('--fix tells in words, and not in JSON.');
    return { format, fix: mends, dry };
  } catch (error) {
    return tellWrongUse(error);
  }
}

function say(text: string, status: number): number {
  if (status === 2) console.error(text);
  else console.log(text);
  return status;
}
