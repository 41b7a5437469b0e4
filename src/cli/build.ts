import { relative } from 'node:path';
import { parseArgs } from 'node:util';
import type { Book } from '../book/types.ts';
import { finishSite } from '../build/finish-site.ts';
import { clearLeftFiles } from '../build/left-files.ts';
import { NotBuilt } from '../build/not-built.ts';
import { type ComingProgram, comingProgram } from '../build/page-program.ts';
import { programKey } from '../build/part-key.ts';
import { projectPages } from '../build/project-pages.ts';
import { putBack } from '../build/replace-folder.ts';
import { clearScratch } from '../build/scratch.ts';
import { endSearch } from '../build/write-search.ts';
import { suggest } from '../read/nearest.ts';
import { cacheDir, contentDir, contentDirProblem, siteDir, workDir } from '../site/folders.ts';
import { aloneInWork } from '../site/work-lock.ts';
import { countProblems, plural } from './print-problems.ts';
import { hasErrors, readyContent } from './ready-content.ts';
import { tellFailure } from './tell-failure.ts';

const HELP = `npm run build [-- --verify]
npm run build -- --only PROJECT [--only PROJECT ...]

Checks the content folder and builds the site. Pages of a project that did not change are those of the last build.
  --verify   reads every original photo again, whatever its size and times say
  --only     makes the pages of some projects and leaves the site as it is, so that several machines can share the
             work: each makes its own into the folder WITNESSMARK_CACHE, and "npm run join" puts them together
Exit status: 0 built, 1 refused, 2 wrong use.
`;

/** How a site is built. */
export interface BuildOptions {
  readonly verify?: boolean;
  /** Makes the pages of these projects, and no site. */
  readonly only?: readonly string[] | undefined;
  /** Makes no pages of projects: all must be there. */
  readonly joining?: boolean;
}

const shown = relative(process.cwd(), siteDir) || siteDir;

/** Checks, then builds the site into `dist/`. A refused or broken build leaves the `dist/` of before as it was. */
export async function main(args: readonly string[]): Promise<number> {
  const options = readArguments(args);
  if (options === 'help') console.log(HELP);
  else if (options === undefined) console.error(HELP);
  if (typeof options !== 'object') return options === 'help' ? 0 : 2;
  return (await buildSite(options)) === undefined ? 1 : 0;
}

/** Builds into a new folder and swaps it in. Returns the book it was built from, or undefined when it was refused. */
export async function buildSite(options: BuildOptions = {}): Promise<Book | undefined> {
  const noDir = contentDirProblem();
  if (noDir) return refuse(noDir);
  const done = await aloneInWork('build', async () => ({ book: await buildAlone(options) }), {
    sharesCache: options.only !== undefined,
  });
  return 'busy' in done ? refuse(`${done.busy}\nNothing was built.`) : done.book;
}

async function buildAlone(options: BuildOptions): Promise<Book | undefined> {
  const asItWas = `Nothing was built; ${shown} is as it was.`;
  try {
    await putBack(siteDir, workDir);
    await clearScratch();
    await clearLeftFiles(workDir);
    if (!options.only) await clearLeftFiles(cacheDir); // With it others may be writing there.
    return await buildOrThrow(options);
  } catch (error) {
    if (error instanceof NotBuilt) return refuse(`${error.message} ${asItWas}`);
    return refuse(`The build broke: ${tellFailure(error) ?? (error as Error).message}\n${asItWas}`);
  } finally {
    await endSearch();
  }
}

async function buildOrThrow(options: BuildOptions): Promise<Book> {
  const program = comingProgram(await programKey(contentDir));
  try {
    return await buildWith(program, options);
  } finally {
    await program.stop();
  }
}

async function buildWith(
  program: ComingProgram,
  { verify = false, only, joining }: BuildOptions,
): Promise<Book> {
  const started = performance.now();
  const ready = await readyContent({ verify, only });
  const { book, problems } = ready;
  if (hasErrors(problems)) throw new NotBuilt(`${countProblems(problems)}.`);
  const ids = book.projects.map(({ id }) => id);
  const unknown = only?.find((id) => !ids.includes(id));
  if (unknown !== undefined)
    throw new NotBuilt(
      `There is no project "${unknown}": ${suggest(unknown, ids) ?? ids.join(', ')}`,
    );

  const pages = await projectPages(only ?? ids, ready);
  if (joining && pages.missing.length > 0) throw new NotBuilt(notMade(pages.missing));
  await program.use(async (program) => {
    if (only) await pages.make(program, 'all');
    else await finishSite(ready, pages, program);
  });
  if (!only) await pages.prune();
  const entries = book.projects.reduce((count, project) => count + project.entries.length, 0);
  const took = `in ${((performance.now() - started) / 1000).toFixed(1)} s`;
  const made = pages.missing.length;
  console.log(
    only
      ? `Made the pages of ${plural(made, 'project')}, ${took}.`
      : `Built ${shown}: ${plural(ids.length, 'project')}, ${plural(entries, 'entry', 'entries')}, ${took}${made < ids.length ? `; made anew: ${made === 0 ? 'none' : pages.missing.join(', ')}` : ''}.`,
  );
  return book;
}

function readArguments(args: readonly string[]): BuildOptions | 'help' | undefined {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        verify: { type: 'boolean', default: false },
        only: { type: 'string', multiple: true },
        help: { type: 'boolean', short: 'h' },
      },
    });
    return values.help ? 'help' : { verify: values.verify, only: values.only };
  } catch {
    return undefined;
  }
}

function notMade(missing: readonly string[]): string {
  const lines = missing.map((id) => `  npm run build -- --only ${id}`);
  return `There are no pages of ${missing.join(', ')} as the content is now. Make them with the same WITNESSMARK_CACHE:\n${lines.join('\n')}`;
}

function refuse(message: string): undefined {
  console.error(message);
  return undefined;
}
