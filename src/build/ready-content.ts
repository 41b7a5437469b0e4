import { makeBook } from '../book/open.ts';
import type { Book } from '../book/types.ts';
import { checkContent } from '../check/check.ts';
import { checkAddresses } from '../cli/address-check.ts';
import { describeProblems, plural } from '../cli/print-problems.ts';
import { terminal } from '../cli/terminal.ts';
import { derivePhotos } from '../photo/derive.ts';
import { type ReadContent, readContent } from '../read/content.ts';
import type { Problem } from '../read/problem.ts';
import { refreshCrossChecks } from '../site/cross-checks.ts';
import { cacheDir, contentDir, workDir } from '../site/folders.ts';
import { type State, stateOf } from './part-key.ts';

/** Content that pages can be made of: it was checked, and what takes long to make is there. */
export interface ReadyContent {
  /** What the folder was just before it was read. */
  readonly state: State;
  readonly content: ReadContent;
  readonly book: Book;
  readonly problems: readonly Problem[];
}

/** What is made ready. */
export interface ReadyOptions {
  /** Reads every original photo again, whatever its size and times say. */
  readonly verify: boolean;
  /** Only photos and values of these projects are made; all are checked. */
  readonly only: readonly string[] | undefined;
}

/** Reads and checks all content and says what is wrong; where nothing is, makes photos and draws values. */
export async function readyContent({ verify, only }: ReadyOptions): Promise<ReadyContent> {
  const state = await stateOf(contentDir);
  const content = await readContent(contentDir);
  const found = checkContent(content, new Date());
  const book = makeBook(content, { problems: found });
  const sound = !hasErrors(found);
  const problems = [
    ...found,
    ...(sound ? await checkAddresses(contentDir, book.site, async () => book) : []),
    ...(sound
      ? await derivePhotos(
          book,
          { contentDir, workDir, cacheDir },
          { verify, only, listener: terminal },
        )
      : []),
  ];
  if (problems.length > 0) console.log(describeProblems(problems, contentDir));
  if (!hasErrors(problems)) {
    const chosen = book.projects.filter(({ id }) => only?.includes(id) ?? true);
    const { drawn, seconds } = await refreshCrossChecks(chosen);
    if (drawn > 0)
      console.log(
        `Drew ${plural(drawn, 'worked-out value')}, as surely as by a million draws each, in ${seconds.toFixed(1)} s.`,
      );
  }
  return { state, content, book, problems };
}

/** Whether one of the problems forbids a build. */
export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some(({ level }) => level === 'error');
}
