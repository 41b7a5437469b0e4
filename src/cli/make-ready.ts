import { makeBook } from '../book/open.ts';
import type { Book } from '../book/types.ts';
import { findParts } from '../build/find-parts.ts';
import { NotBuilt } from '../build/not-built.ts';
import type { ComingProgram } from '../build/page-program.ts';
import { stateOf } from '../build/part-key.ts';
import type { Ready } from '../build/ready.ts';
import { renderSharedPages } from '../build/shared-pages.ts';
import { lap, lapsSoFar } from '../build/stages.ts';
import { toldOutside } from '../build/told-outside.ts';
import { checkContent } from '../check/check.ts';
import { derivePhotos } from '../photo/derive.ts';
import { readContent } from '../read/content.ts';
import { contentState } from '../read/content-state.ts';
import type { Problem } from '../read/problem.ts';
import { refreshCrossChecks } from '../site/cross-checks.ts';
import { cacheDir, contentDir, workDir } from '../site/folders.ts';
import { checkAddresses } from './address-check.ts';
import { noProject } from './no-project.ts';
import { countProblems, describeProblems, plural } from './print-problems.ts';
import { terminal } from './terminal.ts';

/** What is to be made ready. */
export interface ReadyOptions {
  /** Reads every original photo again, whatever its size and times say. */
  readonly verify: boolean;
  /** Only photos, values and pages of these projects are made; all are checked. */
  readonly only?: readonly string[] | undefined;
  /** Makes no pages of projects: all must be there. */
  readonly joining: boolean;
  /** A new folder for the pages that belong to no project. */
  readonly shared: string;
}

/**
 * Reads and checks all content and says what is wrong; where nothing is, makes photos, draws values, and makes the pages that belong to no
 * project and those that are quick to make beside them. Throws NotBuilt where there is nothing to go on with.
 */
export async function makeReady(
  { verify, only, joining, shared }: ReadyOptions,
  program: ComingProgram,
): Promise<Ready> {
  lap('start');
  const before = await contentState(contentDir);
  const state = await stateOf(contentDir);
  const content = await readContent(contentDir);
  const found = checkContent(content, new Date());
  const book = makeBook(content, { problems: found });
  lap('read');
  const problems = hasErrors(found) ? found : [...found, ...(await checkFiles(book, verify, only))];
  lap('photos');
  if (problems.length > 0) console.log(describeProblems(problems, contentDir));
  if (hasErrors(problems)) throw new NotBuilt(`${countProblems(problems)}.`);
  const ids = book.projects.map(({ id }) => id);
  const unknown = only?.find((id) => !ids.includes(id));
  if (unknown !== undefined) throw new NotBuilt(noProject(unknown, ids));
  await drawValues(book, only);
  lap('draws');
  const parts = await findParts(only ?? ids, state);
  if (joining && parts.missing.length > 0) throw new NotBuilt(notMade(parts.missing));
  const beside = only ? [] : parts.quick;
  await program.use(async (program) => {
    if (!only) await renderSharedPages(shared, program, { content, beside });
  });
  lap('pages');
  const { asked, missing } = parts;
  const upToNow = { before: [...before], stages: lapsSoFar() };
  return { ...toldOutside(book), asked, missing, beside, ...upToNow };
}

/** Looks for addresses that vanished, and makes the photos that are to be published. */
async function checkFiles(
  book: Book,
  verify: boolean,
  only: readonly string[] | undefined,
): Promise<readonly Problem[]> {
  const folders = { contentDir, workDir, cacheDir };
  return [
    ...(await checkAddresses(contentDir, book.site, async () => book)),
    ...(await derivePhotos(book, folders, { verify, only, listener: terminal })),
  ];
}

async function drawValues({ projects }: Book, only: readonly string[] | undefined): Promise<void> {
  const { drawn, seconds } = await refreshCrossChecks(
    projects.filter(({ id }) => only?.includes(id) ?? true),
  );
  if (drawn > 0)
    console.log(
      `Drew ${plural(drawn, 'worked-out value')}, as surely as by a million draws each, in ${seconds.toFixed(1)} s.`,
    );
}

/** Whether one of the problems forbids a build. */
function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some(({ level }) => level === 'error');
}

function notMade(missing: readonly { readonly id: string }[]): string {
  const lines = missing.map(({ id }) => `  npm run build -- --only ${id}`);
  return `There are no pages of ${missing.map(({ id }) => id).join(', ')} as the content is now. Make them with the same WITNESSMARK_CACHE:\n${lines.join('\n')}\n`;
}
