import { relative } from 'node:path';
import { build as astroBuild } from 'astro';
import { openBook } from '../book/open.ts';
import type { Book } from '../book/types.ts';
import { wholeNumbers } from '../dossier/identity.ts';
import { derivePhotos } from '../photo/derive.ts';
import { changedSince, contentState } from '../read/content-state.ts';
import type { Problem } from '../read/problem.ts';
import { refreshCrossChecks } from '../site/cross-checks.ts';
import {
  cacheDir,
  contentDir,
  contentDirProblem,
  siteDir,
  stagingDir,
  workDir,
} from '../site/folders.ts';
import { aloneInWork } from '../site/work-lock.ts';
import { checkAddresses } from './address-check.ts';
import { findLeaks } from './leaks.ts';
import { countProblems, describeProblems, plural } from './print-problems.ts';
import { putBack, type Replacement, replaceFolder } from './replace-folder.ts';
import { tellFailure } from './tell-failure.ts';
import { terminal } from './terminal.ts';
import { writeFeeds } from './write-feeds.ts';
import { writeSearch } from './write-search.ts';

const shown = relative(process.cwd(), siteDir) || siteDir;

/**
 * Checks, then builds the site into `dist/`. A refused or broken build leaves the `dist/` of before as it was.
 * With `--verify` every original photo is read again, whatever its size and times say.
 */
export async function main(args: readonly string[]): Promise<number> {
  const built = await buildSite({ verify: args.includes('--verify') });
  return built === undefined ? 1 : 0;
}

/** Builds into a new folder and swaps it in. Returns the book it was built from, or undefined when it was refused. */
export async function buildSite(options: BuildOptions = {}): Promise<Book | undefined> {
  const noDir = contentDirProblem();
  if (noDir) return refuse(noDir);
  const done = await aloneInWork('build', async () => ({ book: await buildAlone(options) }));
  return 'busy' in done ? refuse(`${done.busy}\nNothing was built.`) : done.book;
}

interface BuildOptions {
  readonly verify?: boolean;
}

async function buildAlone({ verify = false }: BuildOptions): Promise<Book | undefined> {
  const started = performance.now();
  await putBack(siteDir, workDir);
  const before = await contentState(contentDir);
  const book = await openBook(contentDir, { now: new Date() });
  const sound = !hasErrors(book.problems);
  const problems = [
    ...book.problems,
    ...(sound ? await checkAddresses(contentDir, book.site, async () => book) : []),
    ...(sound
      ? await derivePhotos(book, { contentDir, workDir, cacheDir }, { verify, listener: terminal })
      : []),
  ];
  if (problems.length > 0) console.log(describeProblems(problems, contentDir));
  if (hasErrors(problems))
    return refuse(`${countProblems(problems)}. Nothing was built; ${shown} is as it was.`);

  const { drawn, seconds } = await refreshCrossChecks(book);
  if (drawn > 0)
    console.log(
      `Drew ${plural(drawn, 'worked-out value')} a million times each, in ${seconds.toFixed(1)} s.`,
    );
  const target = await replaceFolder(siteDir, workDir, stagingDir);
  const failure = await render(target, book);
  if (failure !== undefined) {
    await target.discard();
    return refuse(`The build broke: ${failure}\nNothing was built; ${shown} is as it was.`);
  }
  const changed = changedSince(before, await contentState(contentDir));
  if (changed.length > 0) {
    await target.discard();
    return refuse(
      `Changed while it was read: ${changed.join(', ')}\nNothing was built; ${shown} is as it was. Run the command again.`,
    );
  }
  await target.swapIn();
  const entries = book.projects.reduce((count, project) => count + project.entries.length, 0);
  console.log(
    `Built ${shown}: ${plural(book.projects.length, 'project')}, ${plural(entries, 'entry', 'entries')}, in ${((performance.now() - started) / 1000).toFixed(1)} s.`,
  );
  return book;
}

/** Renders into the new folder; says what went wrong, or nothing. */
async function render(target: Replacement, book: Book): Promise<string | undefined> {
  process.env.WITNESSMARK_OUT = target.fresh;
  try {
    await astroBuild({ logLevel: 'warn', mode: 'production' });
    await writeFeeds(target.fresh, book);
    await writeSearch(target.fresh, book);
  } catch (error) {
    return tellFailure(error) ?? (error as Error).message;
  }
  const leaks = await findLeaks(target.fresh, contentDir, identityTexts(book));
  return leaks.length > 0 ? `these files must not be published: ${leaks.join(', ')}` : undefined;
}

/** The numbers that say which machine it is, whole: no page may have one. */
function identityTexts({ projects }: Book): string[] {
  return projects
    .flatMap((project) => [project.info.machine.identity, ...wholeNumbers(project)])
    .filter((text) => text !== undefined);
}

function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some(({ level }) => level === 'error');
}

function refuse(message: string): undefined {
  console.error(message);
  return undefined;
}
